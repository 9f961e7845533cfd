package dev.offtake.heat;

/** Poisson probabilities near their mean, without overflow and to full precision. */
final class Poisson {
  /** Standard deviations kept on each side; what lies beyond is less than rounding. */
  private static final double WIDTH = 9;

  /** Whole numbers kept besides, for the skewness of small means. */
  private static final double MARGIN = 20;

  private static final int PRODUCT_LIMIT = 16;

  private Poisson() {}

  /** Whole number above which the chance is nil to rounding, relative to what is below. */
  static int top(double mean) {
    if (mean < 1e-8) {
      return 3;
    }
    if (mean < 1e-2) {
      return 8;
    }
    return (int) Math.ceil(mean + WIDTH * Math.sqrt(mean) + MARGIN);
  }

  /** Number below which the chance is nil to rounding; negative where there is none. */
  static double bottom(double mean) {
    return Math.floor(mean - WIDTH * Math.sqrt(mean) - MARGIN);
  }

  /**
   * Chance of a whole number.
   *
   * <p>Source of the saddle-point form: Loader, Fast and Accurate Computation of Binomial
   * Probabilities (2000), from memory. The gamma function itself would lose five digits at means of
   * thousands.
   */
  static double mass(int k, double mean) {
    if (k < PRODUCT_LIMIT) {
      double product = Math.exp(-mean);
      for (int i = 1; i <= k; i++) {
        product *= mean / i;
      }
      return product;
    }
    double shift = (mean - k) / k;
    double deviance = k * (shift - Math.log1p(shift));
    return Math.exp(-deviance - stirlingError(k)) / Math.sqrt(2 * Math.PI * k);
  }

  /** ln k! less Stirling's formula, for k of 16 and more. */
  private static double stirlingError(double k) {
    double square = k * k;
    double series = 1 / 1260.0 - (1 / 1680.0 - 1 / (1188 * square)) / square;
    return (1 / 12.0 - (1 / 360.0 - series / square) / square) / k;
  }
}
