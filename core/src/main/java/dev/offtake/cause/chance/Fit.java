package dev.offtake.cause.chance;

/** Whether readings are such as a forecast makes them. */
public final class Fit {
  private Fit() {}

  /**
   * Chance that a sound forecast misses by as much or more: the upper tail of chi-squared, by the
   * cube-root transformation (Wilson and Hilferty, Proceedings of the National Academy of Sciences
   * 17, 1931), within 0.011.
   *
   * @param misfit squared distance in standard deviations
   * @param readings how many
   */
  public static double chance(double misfit, int readings) {
    if (readings == 0) {
      return 1;
    }
    double spread = 2.0 / (9 * readings);
    double x = (Math.cbrt(misfit / readings) - (1 - spread)) / Math.sqrt(spread);
    return 1 - Gauss.below(x);
  }
}
