package dev.offtake.cause.find;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Looks for two failures at once that explain readings which no single one explains.
 *
 * <p>All pairs are tried with what each does alone added up; the best of them are then solved
 * together.
 */
final class PairSearch {
  /** A failure that moves no number by so much of its own error has nothing to add. */
  private static final double MOVES = 1;

  /** Nor one that changes the chance of what was said by less. */
  private static final double SPEAKS = 0.2;

  private static final double NEVER = -1e6;

  /** So many partners of one failure are kept. */
  private static final int FOR_EACH = 6;

  private final Weigher weigher;
  private final double[] sound;
  private final double[][] slopes;

  /**
   * Prepares.
   *
   * @param sound what a sound system foretells
   * @param slopes of a sound system
   */
  PairSearch(Weigher weigher, double[] sound, double[][] slopes) {
    this.weigher = weigher;
    this.sound = sound;
    this.slopes = slopes;
  }

  /** Two numbers of single failures with what they are worth together. */
  private record Scored(int one, int two, double log) {}

  /**
   * The pairs that may explain the readings.
   *
   * @param singles all single failures, weighed
   * @param count how many pairs
   */
  List<Cause> best(List<Candidate> singles, int count) {
    List<Candidate> movers = singles.stream().filter(this::moves).toList();
    List<List<double[]>> shifts = movers.stream().map(this::shifts).toList();
    Weigher.Model model = weigher.model(slopes);
    return IntStream.range(0, movers.size())
        .parallel()
        .boxed()
        .flatMap(i -> with(i, movers, shifts, model).stream())
        .sorted(Comparator.comparingDouble(pair -> -pair.log()))
        .limit(count)
        .map(pair -> together(movers.get(pair.one()), movers.get(pair.two())))
        .toList();
  }

  /**
   * Single failures that make a warning speak which did not, the best first by the numbers alone.
   *
   * @param count how many
   */
  List<Candidate> loud(List<Candidate> singles, int count) {
    return singles.stream()
        .filter(single -> single.weighed().cause().faults().size() == 1)
        .filter(single -> weigher.numbers(single.weighed().course(), slopes, sound) > NEVER)
        .sorted(
            Comparator.comparingDouble(
                single ->
                    -single.before() - weigher.numbers(single.weighed().course(), slopes, sound)))
        .limit(count)
        .toList();
  }

  private static Cause together(Candidate one, Candidate two) {
    return Cause.of(one.weighed().cause().faults().get(0), two.weighed().cause().faults().get(0));
  }

  private List<Scored> with(
      int one, List<Candidate> movers, List<List<double[]>> shifts, Weigher.Model model) {
    List<Scored> pairs = new ArrayList<>();
    Candidate first = movers.get(one);
    for (int two = one + 1; two < movers.size(); two++) {
      Candidate second = movers.get(two);
      if (!part(first).equals(part(second))) {
        double log = first.before() + second.before();
        pairs.add(new Scored(one, two, log + worth(shifts.get(one), shifts.get(two), model)));
      }
    }
    pairs.sort(Comparator.comparingDouble(pair -> -pair.log()));
    return pairs.subList(0, Math.min(FOR_EACH, pairs.size()));
  }

  private static String part(Candidate candidate) {
    return candidate.weighed().cause().faults().get(0).part().name();
  }

  /** The best that the sums of both reach: they lie too far apart to be averaged. */
  private double worth(List<double[]> one, List<double[]> two, Weigher.Model model) {
    double best = Double.NEGATIVE_INFINITY;
    double[] forecast = new double[sound.length];
    for (double[] a : one) {
      for (double[] b : two) {
        for (int c = 0; c < forecast.length; c++) {
          forecast[c] = sound[c] + a[c] + b[c];
        }
        best = Math.max(best, model.log(forecast));
      }
    }
    return best;
  }

  private boolean moves(Candidate candidate) {
    if (candidate.weighed().cause().faults().size() != 1) {
      return false;
    }
    return candidate.weighed().course().points().stream()
        .anyMatch(
            point ->
                weigher.apart(point.forecast(), sound) > MOVES
                    || weigher.speaks(point.forecast(), sound) > SPEAKS);
  }

  /** What it changes, at a dozen of its extents. */
  private List<double[]> shifts(Candidate candidate) {
    List<Course.Point> points = candidate.weighed().course().points();
    int stride = Math.max(1, points.size() / 12);
    List<double[]> shifts = new ArrayList<>();
    for (int i = stride / 2; i < points.size(); i += stride) {
      double[] shift = points.get(i).forecast().clone();
      for (int c = 0; c < shift.length; c++) {
        shift[c] -= sound[c];
      }
      shifts.add(shift);
    }
    return shifts;
  }
}
