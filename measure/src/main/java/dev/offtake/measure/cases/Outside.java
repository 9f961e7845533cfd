package dev.offtake.measure.cases;

/**
 * The air that the plant stands in.
 *
 * @param p Pa
 * @param t K
 * @param mach of the aircraft
 */
record Outside(double p, double t, double mach) {
  private static final double G = 1.4;

  /** Standard air at sea level, at rest. */
  static final Outside STANDARD = new Outside(Shop.STANDARD_P, Shop.STANDARD_T, 0);

  /**
   * Standard air below 11 km by the short formulas of the flying handbooks (ICAO, rounded
   * constants, from memory).
   *
   * @param height m
   * @param mach of the aircraft
   */
  static Outside at(double height, double mach) {
    double p = Shop.STANDARD_P * Math.pow(1 - 2.25577e-5 * height, 5.25588);
    return new Outside(p, Shop.STANDARD_T - 0.0065 * height, mach);
  }

  /** The same with other air. */
  Outside off(double pascal, double kelvin) {
    return new Outside(p + pascal, t + kelvin, mach);
  }

  /** Total temperature at the engine's inlet, K. */
  double inletT() {
    return t * (1 + (G - 1) / 2 * mach * mach);
  }

  /** Total pressure at the engine's inlet, Pa, no loss. */
  double inletP() {
    return p * Math.pow(inletT() / t, G / (G - 1));
  }
}
