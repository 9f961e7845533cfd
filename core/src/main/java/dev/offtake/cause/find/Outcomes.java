package dev.offtake.cause.find;

import java.util.ArrayList;
import java.util.List;

/** Cuts what an instrument may show into outcomes with their chance under each suspect. */
final class Outcomes {
  private static final int BINS = 48;
  private static final double REACH = 3.5;

  private Outcomes() {}

  /**
   * The outcomes of a reading.
   *
   * @param showings of each suspect
   * @param lamp whether it only is lit or not
   * @return for each outcome its chance under each suspect
   */
  static double[][] of(List<Showing> showings, boolean lamp) {
    if (lamp) {
      double[] on = showings.stream().mapToDouble(s -> sure(s.mean())).toArray();
      return yesOrNo(on);
    }
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (Showing showing : showings) {
      for (double mean : showing.means()) {
        low = Math.min(low, mean - REACH * showing.deviation());
        high = Math.max(high, mean + REACH * showing.deviation());
      }
    }
    List<double[]> outcomes = new ArrayList<>();
    for (int i = 0; i < BINS; i++) {
      double from = i == 0 ? Double.NEGATIVE_INFINITY : low + (high - low) * i / BINS;
      double to = i == BINS - 1 ? Double.POSITIVE_INFINITY : low + (high - low) * (i + 1) / BINS;
      outcomes.add(showings.stream().mapToDouble(s -> s.between(from, to)).toArray());
    }
    return outcomes.toArray(double[][]::new);
  }

  /** Two outcomes, by the chance of the first under each suspect. */
  static double[][] yesOrNo(double[] yes) {
    double[] no = new double[yes.length];
    for (int i = 0; i < no.length; i++) {
      no[i] = 1 - yes[i];
    }
    return new double[][] {yes, no};
  }

  private static double sure(double lit) {
    return Words.WRONG_LIGHT + (1 - 2 * Words.WRONG_LIGHT) * lit;
  }
}
