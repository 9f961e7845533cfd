package dev.offtake.cause.find;

import dev.offtake.cause.chance.LinearModel;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Puts causes together that readings like these cannot part: the expected logarithm of the factor
 * by which they would change the odds between two of them (Kullback and Leibler 1951) is below one
 * even in the better of the two cases.
 */
final class LookAlikes {
  private static final double PARTED = 1;

  private final List<Clue> clues;
  private final int[] measured;
  private final LinearModel model;

  /**
   * Prepares.
   *
   * @param clues what was read
   * @param slopes of a sound system
   */
  LookAlikes(List<Clue> clues, double[][] slopes) {
    this.clues = clues;
    measured = IntStream.range(0, clues.size()).filter(i -> clues.get(i).measured()).toArray();
    double[][] rows = Arrays.stream(measured).mapToObj(i -> slopes[i]).toArray(double[][]::new);
    double[] variance =
        Arrays.stream(measured)
            .mapToDouble(i -> ((Likelihood.Measured) clues.get(i).likelihood()).variance())
            .toArray();
    model = new LinearModel(rows, variance);
  }

  /** Groups of a ranking, the likeliest first; {@code sound} is what a sound system foretells. */
  List<Found.Group> groups(List<Ranked> ranked, List<Double> sound) {
    List<List<Integer>> groups = new ArrayList<>();
    for (int i = 0; i < ranked.size(); i++) {
      int own = i;
      groups.stream()
          .filter(g -> g.stream().allMatch(m -> alike(ranked.get(m), ranked.get(own))))
          .findFirst()
          .ifPresentOrElse(
              group -> group.add(own), () -> groups.add(new ArrayList<>(List.of(own))));
    }
    return groups.stream()
        .map(
            members ->
                new Found.Group(
                    members,
                    members.stream().mapToDouble(m -> ranked.get(m).chance()).sum(),
                    members.stream()
                        .allMatch(m -> apart(ranked.get(m).foretold(), sound) < PARTED)))
        .sorted((a, b) -> Double.compare(b.chance(), a.chance()))
        .toList();
  }

  private boolean alike(Ranked one, Ranked two) {
    return apart(one.foretold(), two.foretold()) < PARTED;
  }

  /** Expected logarithm of the odds factor between two forecasts, in the better direction. */
  double apart(List<Double> one, List<Double> two) {
    double[] off = new double[measured.length];
    for (int i = 0; i < off.length; i++) {
      off[i] = one.get(measured[i]) - two.get(measured[i]);
    }
    double apart = model.misfit(off) / 2;
    for (int c = 0; c < clues.size(); c++) {
      if (clues.get(c).likelihood() instanceof Likelihood.Said said) {
        double p = said.chance().applyAsDouble(one.get(c));
        double q = said.chance().applyAsDouble(two.get(c));
        apart += Math.max(divergence(p, q), divergence(q, p));
      }
    }
    return apart;
  }

  private static double divergence(double p, double q) {
    return p * Math.log(p / q) + (1 - p) * Math.log((1 - p) / (1 - q));
  }
}
