package dev.offtake.cause.chance;

/** How much a look would tell (Shannon 1948), in bits. */
public final class Information {
  private Information() {}

  /** Entropy of chances that sum to one. */
  public static double entropy(double... chances) {
    double sum = 0;
    for (double p : chances) {
      sum -= p > 0 ? p * Math.log(p) / Math.log(2) : 0;
    }
    return sum;
  }

  /**
   * Chances after an outcome, by Bayes' rule.
   *
   * @param before chances; sum to one
   * @param outcome chance of the outcome under each
   * @return the same as before where the outcome is impossible
   */
  public static double[] after(double[] before, double[] outcome) {
    double all = chance(before, outcome);
    double[] after = before.clone();
    for (int i = 0; i < after.length && all > 0; i++) {
      after[i] = before[i] * outcome[i] / all;
    }
    return after;
  }

  /** Chance of an outcome. */
  public static double chance(double[] before, double[] outcome) {
    double sum = 0;
    for (int i = 0; i < before.length; i++) {
      sum += before[i] * outcome[i];
    }
    return sum;
  }

  /**
   * How much entropy an outcome takes away on average.
   *
   * @param before chances; sum to one
   * @param outcomes for each outcome its chance under each; they sum to one over the outcomes
   */
  public static double gain(double[] before, double[][] outcomes) {
    double gain = entropy(before);
    for (double[] outcome : outcomes) {
      gain -= chance(before, outcome) * entropy(after(before, outcome));
    }
    return gain;
  }
}
