package dev.offtake.part;

/**
 * Pressure and temperature of a compressor stage or fan as ratios to the inlet's total state, over corrected speed.
 *
 * <p>Between points ln(p/p₀ − 1) and ln(T/T₀ − 1) are linear in ln N, so that a curve through rising points rises and
 * meets each of them exactly; outside, the exponent of the last gap goes on. The similarity of turbomachines at equal
 * corrected speed is textbook matter (Dixon and Hall, Fluid Mechanics and Thermodynamics of Turbomachinery, chapter 2);
 * the interpolation is our own choice and its error a nuisance of its own.
 */
final class TapCurve {
  /** Share of speed outside the table beyond which the curve means nothing: an assumption. */
  static final double LIMIT = 0.15;

  /** Spread between points at mid-gap, as a share of p/p₀ − 1: an assumption. */
  static final double SPREAD = 0.05;

  /** Growth of the spread outside the table, per share of speed: 1 % per 1 %, an assumption. */
  private static final double GROWTH = 1;

  /** Largest bump as a share of the rise over its gap; at a quarter the curve would stop rising. */
  private static final double MONOTONE = 0.24;

  private final double[] lnN;
  private final double[] lnP;
  private final double[] lnT;

  /**
   * Makes a curve through points.
   *
   * @param speed corrected speeds, fractions, strictly rising, two or more
   * @param pressure ratios p/p₀, over 1, strictly rising
   * @param temperature ratios T/T₀, over 1, strictly rising
   */
  TapCurve(double[] speed, double[] pressure, double[] temperature) {
    int n = speed.length;
    lnN = new double[n];
    lnP = new double[n];
    lnT = new double[n];
    for (int i = 0; i < n; i++) {
      lnN[i] = Math.log(speed[i]);
      lnP[i] = Math.log(pressure[i] - 1);
      lnT[i] = Math.log(temperature[i] - 1);
    }
  }

  /**
   * Pressure ratio to the inlet.
   *
   * @param speed corrected speed, a fraction over 0
   * @param bump how far the curve bends away from the straight line at mid-gap, as a share of p/p₀ − 1; outside the
   *     table it grows with the distance. It is held small enough for the curve to keep rising
   */
  double pressure(double speed, double bump) {
    return 1 + Math.exp(at(lnP, Math.log(speed))) * (1 + bend(speed, bump));
  }

  /**
   * Temperature ratio to the inlet.
   *
   * @param speed corrected speed, a fraction over 0
   */
  double temperature(double speed) {
    return 1 + Math.exp(at(lnT, Math.log(speed)));
  }

  /** Share of speed by which a speed lies outside the table: 0 inside, negative below it. */
  double beyond(double speed) {
    double x = Math.log(speed);
    int last = lnN.length - 1;
    return x > lnN[last]
        ? speed / Math.exp(lnN[last]) - 1
        : x < lnN[0] ? speed / Math.exp(lnN[0]) - 1 : 0;
  }

  /** Lowest and highest speed of the table in words: {@code 62 to 99 %}. */
  String range() {
    return "%.0f to %.0f %%"
        .formatted(100 * Math.exp(lnN[0]), 100 * Math.exp(lnN[lnN.length - 1]));
  }

  private double bend(double speed, double bump) {
    double outside = Math.abs(beyond(speed));
    if (outside > 0) {
      return Math.max(-0.5, bump / SPREAD * GROWTH * Math.min(outside, 2 * LIMIT));
    }
    double x = Math.log(speed);
    int i = gap(x);
    double s = share(i, x);
    double most = MONOTONE * (lnP[i + 1] - lnP[i]);
    return 4 * Math.max(-most, Math.min(most, bump)) * s * (1 - s);
  }

  private double at(double[] y, double x) {
    int i = gap(x);
    double s = share(i, x);
    // Written so that s = 0 and s = 1 give the table's points to the last bit.
    return s == 1 ? y[i + 1] : y[i] + s * (y[i + 1] - y[i]);
  }

  private double share(int gap, double x) {
    return (x - lnN[gap]) / (lnN[gap + 1] - lnN[gap]);
  }

  private int gap(double x) {
    int i = 0;
    while (i < lnN.length - 2 && x > lnN[i + 1]) {
      i++;
    }
    return i;
  }
}
