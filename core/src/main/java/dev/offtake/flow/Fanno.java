package dev.offtake.flow;

/**
 * Adiabatic flow with friction in a constant bore (Fanno) by Mach number, γ above 1; NACA Report
 * 1135 and any textbook of gas dynamics. The star marks the state at M = 1.
 */
public final class Fanno {
  private Fanno() {}

  /** f·L* /D to the choke, Darcy f. */
  public static double lengthToChoke(double mach, double gamma) {
    double m2 = mach * mach;
    return (1 - m2) / (gamma * m2) + (gamma + 1) / (2 * gamma) * Math.log(staticRatio(m2, gamma));
  }

  /**
   * f·L/D between two Mach numbers, accurate however close they are.
   *
   * @param mach at the inlet
   * @param lnRise ln(M₂/M₁)
   * @param gamma ratio of heat capacities
   * @return friction number, positive for a subsonic rise
   */
  public static double lengthBetween(double mach, double lnRise, double gamma) {
    double m2 = mach * mach;
    double gain = NearOne.expm1(2 * lnRise);
    double lnQ = NearOne.log1p(0.5 * (gamma - 1) * m2 * gain / Isentropic.q(mach, gamma));
    return -NearOne.expm1(-2 * lnRise) / (gamma * m2)
        - (gamma + 1) / (2 * gamma) * (2 * lnRise - lnQ);
  }

  /** T/T*. */
  public static double temperatureRatio(double mach, double gamma) {
    return (gamma + 1) / (2 * Isentropic.q(mach, gamma));
  }

  /** p/p*. */
  public static double pressureRatio(double mach, double gamma) {
    return Math.sqrt(temperatureRatio(mach, gamma)) / mach;
  }

  /** p_total/p_total*. */
  public static double totalPressureRatio(double mach, double gamma) {
    return Isentropic.areaRatio(mach, gamma);
  }

  /** V/V*. */
  public static double velocityRatio(double mach, double gamma) {
    return Math.sqrt(temperatureRatio(mach, gamma)) * mach;
  }

  /** Partial of {@link #lengthToChoke} by γ at constant M. */
  static double dLengthByGamma(double mach, double gamma) {
    double m2 = mach * mach;
    double g2 = gamma * gamma;
    return -(1 - m2) / (g2 * m2)
        - 0.5 / g2 * Math.log(staticRatio(m2, gamma))
        + (gamma + 1) / (2 * gamma) * (1 / (gamma + 1) - 0.5 * m2 / Isentropic.q(mach, gamma));
  }

  private static double staticRatio(double m2, double gamma) {
    return (gamma + 1) * m2 / (2 + (gamma - 1) * m2);
  }
}
