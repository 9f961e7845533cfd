package dev.offtake.air;

/**
 * Viscosity and thermal conductivity of air at low density.
 *
 * <p>Source: Lemmon and Jacobsen, Viscosity and Thermal Conductivity Equations for Nitrogen,
 * Oxygen, Argon, and Air, Int. J. Thermophysics 25 (2004), equations 2, 3 and 5, coefficients of
 * air (from memory; held to an independent implementation by the check against real air). The terms
 * for density are left out: at 20 bar they add 1.7 % at 300 K and 0.3 % at 800 K to viscosity.
 * Sutherland's law would be 3 % low at 800 K.
 *
 * <p>The floor at 20 K keeps an iteration that strays out of range finite.
 */
final class DiluteTransport {
  private static final double FLOOR = 20;

  /** Energy parameter ε/k, K. */
  private static final double ENERGY = 103.3;

  /** Collision diameter, nm. */
  private static final double DIAMETER = 0.360;

  /** Molar mass as the paper has it, g/mol. */
  private static final double MOLAR_MASS = 28.9586;

  /** Critical temperature as the paper has it, K. */
  private static final double CRITICAL_T = 132.6312;

  /** Coefficients of ln Ω against ln(T/ε). */
  private static final double B0 = 0.431;

  private static final double B1 = -0.4623;
  private static final double B2 = 0.08406;
  private static final double B3 = 0.005341;
  private static final double B4 = -0.00331;

  private static final double SCALE = 1e-6 * 0.0266958 / (DIAMETER * DIAMETER);

  private DiluteTransport() {}

  /** Dynamic viscosity, Pa s. */
  static double viscosity(double temperature) {
    double t = Math.max(temperature, FLOOR);
    double x = Math.log(t / ENERGY);
    double lnOmega = B0 + x * (B1 + x * (B2 + x * (B3 + x * B4)));
    return SCALE * Math.sqrt(MOLAR_MASS * t) * Math.exp(-lnOmega);
  }

  /** Derivative of {@link #viscosity}, Pa s/K; zero below the floor. */
  static double dViscosity(double t) {
    if (t < FLOOR) {
      return 0;
    }
    double x = Math.log(t / ENERGY);
    double slope = B1 + x * (2 * B2 + x * (3 * B3 + x * 4 * B4));
    return viscosity(t) * (0.5 - slope) / t;
  }

  /** Thermal conductivity, W/(m K). */
  static double conductivity(double temperature) {
    double t = Math.max(temperature, FLOOR);
    double lnTau = Math.log(CRITICAL_T / t);
    double internal = 1.405 * Math.exp(-1.1 * lnTau) - 1.036 * Math.exp(-0.3 * lnTau);
    return 1e-3 * (1.308 * 1e6 * viscosity(t) + internal);
  }
}
