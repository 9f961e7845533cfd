package dev.offtake.measure.find;

import dev.offtake.measure.cases.Bin;
import dev.offtake.measure.cases.Case;
import dev.offtake.measure.cases.Cases;
import dev.offtake.measure.cases.Insider;
import dev.offtake.measure.cases.ModeLine;
import dev.offtake.measure.cases.Truth;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Consumer;

/**
 * How well the cases of {@link Score} could be told at all: by somebody who knows the plant's own
 * laws. An answer that names k causes and counts 1/k when the truth is among them cannot, on
 * average, count more than the chance that the likeliest one is the truth.
 */
public final class Ceiling {
  /** Seed of the insider's plants, so that no case shares them. */
  private static final long PLANTS = 0x696e_7369_6465_7221L;

  private final Cases cases = new Cases();
  private final Insider insider;
  private final Consumer<String> out;

  /**
   * Prepares: some six seconds of a core for each plant of a mode.
   *
   * @param count plants of each mode
   * @param out takes each line
   */
  public Ceiling(int count, Consumer<String> out) {
    this.out = out;
    insider = new Insider(cases, count, PLANTS, Ceiling::progress);
  }

  /**
   * Runs.
   *
   * @param arguments plants of each mode; how many modes (each once in every bin); how many drawn
   *     by rate; seed
   */
  public static void main(String[] arguments) {
    Ceiling ceiling = new Ceiling(Integer.parseInt(arguments[0]), System.out::println);
    SplittableRandom seeds = new SplittableRandom(Long.parseLong(arguments[3]));
    long ranking = seeds.nextLong();
    // Score draws healthy plants and strangers between these.
    seeds.nextLong();
    seeds.nextLong();
    ceiling.ranking(Integer.parseInt(arguments[1]), ranking);
    ceiling.byRate(Integer.parseInt(arguments[2]), seeds.nextLong());
  }

  private static void progress(double share) {
    System.err.printf(
        Locale.ROOT, "\r%3.0f %% of the plants%s", 100 * share, share < 1 ? "" : "\n");
  }

  private final class Sum {
    private final List<Double> believed = new ArrayList<>();
    private int first;
    private int part;
    private int three;
    private double log;

    void add(double[] chances, int truth) {
      double most = Arrays.stream(chances).max().orElseThrow();
      long before = Arrays.stream(chances).filter(chance -> chance > chances[truth]).count();
      believed.add(most);
      first += before == 0 ? 1 : 0;
      part += likeliestPart(chances).equals(part(truth)) ? 1 : 0;
      three += before < 3 ? 1 : 0;
      log += Math.log(Math.max(1e-4, chances[truth]));
    }

    String words() {
      int n = believed.size();
      if (n == 0) {
        return "no cases";
      }
      return String.format(
          Locale.ROOT,
          "%d cases, likeliest cause is the truth %.3f (believed %.3f), likeliest part %.3f, truth"
              + " among three %.3f, log score %.3f",
          n,
          first / (double) n,
          believed.stream().mapToDouble(one -> one).average().orElse(0),
          part / (double) n,
          three / (double) n,
          log / n);
    }
  }

  /** The cases of {@link Score#ranking}. */
  void ranking(int modes, long seed) {
    SplittableRandom numbers = new SplittableRandom(seed);
    List<ModeLine> left = new ArrayList<>(cases.modes());
    Sum[] sums = {new Sum(), new Sum(), new Sum()};
    Bin[] bins = {Bin.NEAR, Bin.CLEAR, Bin.PLAIN};
    for (int i = 0; i < modes && !left.isEmpty(); i++) {
      ModeLine line = left.remove(numbers.nextInt(left.size()));
      for (int b = 0; b < bins.length; b++) {
        Optional<Case> one = cases.listed(line, bins[b], numbers.nextLong());
        if (one.isPresent()) {
          double[] chances = insider.of(one.get(), bins[b]).chances(0, mode -> 1);
          sums[b].add(chances, cases.modes().indexOf(line));
        }
      }
    }
    for (int b = 0; b < bins.length; b++) {
      out.accept(bins[b] + ": " + sums[b].words());
    }
  }

  /** The cases of calibration. */
  void byRate(int count, long seed) {
    SplittableRandom numbers = new SplittableRandom(seed);
    Sum sum = new Sum();
    for (int i = 0; i < count; i++) {
      boolean healthy = numbers.nextBoolean();
      long number = numbers.nextLong();
      Case one = healthy ? cases.healthy(number) : cases.byRate(number);
      double[] chances = insider.of(one).chances(0.5, ModeLine::rate);
      sum.add(chances, place(one.truth()));
    }
    out.accept("by rate: " + sum.words());
  }

  private int place(Truth truth) {
    for (int i = 0; i < cases.modes().size(); i++) {
      ModeLine mode = cases.modes().get(i);
      if (mode.part().equals(truth.part()) && mode.mode().equals(truth.mode())) {
        return i;
      }
    }
    return cases.modes().size();
  }

  /** Part of a place; nothing for a sound plant. */
  private String part(int place) {
    return place < cases.modes().size() ? cases.modes().get(place).part() : "";
  }

  /** The part with the largest sum of chances. */
  private String likeliestPart(double[] chances) {
    Map<String, Double> sums = new LinkedHashMap<>();
    for (int i = 0; i < chances.length; i++) {
      sums.merge(part(i), chances[i], Double::sum);
    }
    return sums.entrySet().stream().max(Map.Entry.comparingByValue()).orElseThrow().getKey();
  }
}
