package dev.offtake.cause.find;

/** How far a forecast may be from an engine that is as it should be, until a match tells better. */
final class Errors {
  /** Of a gauge pressure, as a share: an assumption. */
  private static final double PRESSURE = 0.03;

  /** Least error of a pressure, Pa (0.3 psi): an assumption. */
  private static final double LEAST = 0.3 * 6894.757;

  /** Of a temperature, K (15 °F): an assumption. */
  private static final double TEMPERATURE = 15 / 1.8;

  private Errors() {}

  /** Standard deviation of a gauge pressure, Pa. */
  static double pressure(double gauge) {
    return Math.max(LEAST, PRESSURE * Math.abs(gauge));
  }

  /** Standard deviation of a temperature, K. */
  static double temperature() {
    return TEMPERATURE;
  }

  /**
   * Standard deviation of something that is watched.
   *
   * @param temperature whether it is a temperature
   * @param value K, or Pa above the air outside
   */
  static double of(boolean temperature, double value) {
    return temperature ? temperature() : pressure(value);
  }
}
