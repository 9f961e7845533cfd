package dev.offtake.flow;

/** Ratios across a normal shock by the Mach number before it, M ≥ 1; NACA Report 1135. */
public final class NormalShock {
  private NormalShock() {}

  /** Mach number behind the shock. */
  public static double machBehind(double mach, double gamma) {
    double m2 = mach * mach;
    return Math.sqrt(Isentropic.q(mach, gamma) / (gamma * m2 - 0.5 * (gamma - 1)));
  }

  /** p₂/p₁. */
  public static double pressureRatio(double mach, double gamma) {
    return 1 + 2 * gamma / (gamma + 1) * (mach * mach - 1);
  }

  /** ρ₂/ρ₁. */
  public static double densityRatio(double mach, double gamma) {
    double m2 = mach * mach;
    return (gamma + 1) * m2 / (2 + (gamma - 1) * m2);
  }

  /** T₂/T₁. */
  public static double temperatureRatio(double mach, double gamma) {
    return pressureRatio(mach, gamma) / densityRatio(mach, gamma);
  }

  /** p_total₂/p_total₁. */
  public static double totalPressureRatio(double mach, double gamma) {
    double below = gamma - 1;
    return Math.pow(densityRatio(mach, gamma), gamma / below)
        * Math.pow(pressureRatio(mach, gamma), -1 / below);
  }
}
