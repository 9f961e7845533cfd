package dev.offtake.air;

/** Dry air as an ideal gas with temperature-dependent heat. */
public final class Air {
  /** Specific gas constant, J/(kg K). */
  public static final double R = 8.31446261815324 / 28.9651159e-3;

  private Air() {}

  /** Isobaric heat capacity, J/(kg K). */
  public static double cp(double t) {
    throw new UnsupportedOperationException();
  }

  /** Derivative of {@link #cp}, J/(kg K²). */
  public static double dCp(double t) {
    throw new UnsupportedOperationException();
  }

  /** Specific enthalpy, J/kg. */
  public static double h(double t) {
    throw new UnsupportedOperationException();
  }

  /** Ratio of heat capacities. */
  public static double gamma(double t) {
    throw new UnsupportedOperationException();
  }

  /** Derivative of {@link #gamma}, 1/K. */
  public static double dGamma(double t) {
    throw new UnsupportedOperationException();
  }

  /** Temperature at which the enthalpy has a value, K. */
  public static double temperature(double h) {
    throw new UnsupportedOperationException();
  }

  /** Dynamic viscosity, Pa s. */
  public static double viscosity(double t) {
    throw new UnsupportedOperationException();
  }

  /** Derivative of {@link #viscosity}, Pa s/K. */
  public static double dViscosity(double t) {
    throw new UnsupportedOperationException();
  }

  /** Thermal conductivity, W/(m K). */
  public static double conductivity(double t) {
    throw new UnsupportedOperationException();
  }
}
