package dev.offtake.flow;

/**
 * Isentropic flow of a perfect gas by Mach number M; NACA Report 1135.
 *
 * <p>All functions hold for M above 0 and γ above 1.
 */
public final class Isentropic {
  private static final int MOST_STEPS = 60;

  private Isentropic() {}

  /** T/T_total. */
  public static double temperatureRatio(double mach, double gamma) {
    return 1 / q(mach, gamma);
  }

  /** p/p_total. */
  public static double pressureRatio(double mach, double gamma) {
    return Math.exp(-lnTotalOverStatic(mach, gamma));
  }

  /** ρ/ρ_total. */
  public static double densityRatio(double mach, double gamma) {
    return Math.pow(q(mach, gamma), -1 / (gamma - 1));
  }

  /** A/A*. */
  public static double areaRatio(double mach, double gamma) {
    return Math.exp(lnFlow(1, gamma) - lnFlow(mach, gamma));
  }

  /** ln(p_total/p), accurate down to the smallest M. */
  public static double lnTotalOverStatic(double mach, double gamma) {
    return gamma / (gamma - 1) * lnQ(mach, gamma);
  }

  /** Partial of {@link #lnTotalOverStatic} by γ at constant M. */
  public static double dLnTotalOverStaticByGamma(double mach, double gamma) {
    double below = gamma - 1;
    return -lnQ(mach, gamma) / (below * below) + gamma / below * 0.5 * mach * mach / q(mach, gamma);
  }

  /** ln φ of the flow function φ = ṁ·√(R·T_total)/(A·p_total). */
  public static double lnFlow(double mach, double gamma) {
    return 0.5 * Math.log(gamma) + Math.log(mach) - exponent(gamma) * lnQ(mach, gamma);
  }

  /** Partial of {@link #lnFlow} by γ at constant M. */
  public static double dLnFlowByGamma(double mach, double gamma) {
    double below = gamma - 1;
    return 0.5 / gamma
        + lnQ(mach, gamma) / (below * below)
        - exponent(gamma) * 0.5 * mach * mach / q(mach, gamma);
  }

  /**
   * Logarithm of the subsonic Mach number of a flow function: each step goes to the root of the
   * parabola that touches ln φ in value, slope and bend, which also finds its way near the choke,
   * where the slope vanishes.
   *
   * @param lnFlow ln (φ/√γ), below that of the choke
   * @param gamma ratio of heat capacities
   * @param guess a guess of the answer, finite
   * @return 0 or less
   */
  static double lnMach(double lnFlow, double gamma, double guess) {
    double m = guess;
    double power = exponent(gamma);
    double below = 0.5 * (gamma - 1);
    for (int i = 0; i < MOST_STEPS; i++) {
      double m2 = Math.exp(2 * m);
      double head = below * m2;
      double q = 1 + head;
      double missing = lnFlow - (m - power * NearOne.log1p(head));
      double slope = (1 - m2) / q;
      double bend = -(gamma + 1) * m2 / (q * q);
      double root = Math.sqrt(Math.max(0, slope * slope + 2 * bend * missing));
      double step = slope > 0 || root > 0 ? 2 * missing / (Math.max(slope, 0) + root) : 0;
      m = Math.min(m + step, 0);
      // The error left is of the order of the step's cube.
      if (!(Math.abs(step) > 1e-6)) {
        break;
      }
    }
    return m;
  }

  /** T_total/T. */
  static double q(double mach, double gamma) {
    return 1 + 0.5 * (gamma - 1) * mach * mach;
  }

  /** (γ+1)/(2(γ−1)). */
  static double exponent(double gamma) {
    return (gamma + 1) / (2 * (gamma - 1));
  }

  private static double lnQ(double mach, double gamma) {
    return NearOne.log1p(0.5 * (gamma - 1) * mach * mach);
  }
}
