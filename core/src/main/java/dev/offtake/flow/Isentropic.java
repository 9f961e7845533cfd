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
   * Subsonic Mach number of a flow function.
   *
   * @param lnFlow ln φ; at the choke and beyond the answer is 1
   * @param gamma ratio of heat capacities
   * @return Mach number, 0..1
   */
  public static double machFromLnFlow(double lnFlow, double gamma) {
    if (lnFlow >= lnFlow(1, gamma)) {
      return 1;
    }
    // ln φ is concave in ln M and the start lies left of the root: Newton never oversteps.
    double m = lnFlow - 0.5 * Math.log(gamma);
    for (int i = 0; i < MOST_STEPS; i++) {
      double mach = Math.exp(m);
      double missing = lnFlow - lnFlow(mach, gamma);
      double step = missing * q(mach, gamma) / (1 - mach * mach);
      if (!(step > 1e-16 * (1 + Math.abs(m))) || m + step >= 0) {
        break;
      }
      m += step;
    }
    return Math.exp(m);
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
    return Math.log1p(0.5 * (gamma - 1) * mach * mach);
  }
}
