package dev.offtake.measure.cases;

/** Units of the shop in SI, from their definitions, and the air that the demo's table stands on. */
final class Shop {
  /** A pound-force per square inch, Pa. */
  static final double PSI = 6894.757293168;

  /** A pound a minute, kg/s. */
  static final double LB_MIN = 0.45359237 / 60;

  /** An inch, m. */
  static final double INCH = 0.0254;

  /** A square inch, m². */
  static final double IN2 = INCH * INCH;

  /** A foot, m. */
  static final double FOOT = 0.3048;

  /** An inch of mercury at 0 °C, Pa. */
  static final double IN_HG = 3386.389;

  /** A degree Fahrenheit of difference, K. */
  static final double DEG_F = 5.0 / 9;

  /** Standard air at sea level, Pa. */
  static final double STANDARD_P = 101_325;

  /** Standard air at sea level, K. */
  static final double STANDARD_T = 288.15;

  private Shop() {}

  /** A temperature in °F, K. */
  static double kelvin(double fahrenheit) {
    return (fahrenheit + 459.67) * DEG_F;
  }

  /** Area of a round bore given in inches, m². */
  static double bore(double inches) {
    double metres = inches * INCH;
    return Math.PI / 4 * metres * metres;
  }
}
