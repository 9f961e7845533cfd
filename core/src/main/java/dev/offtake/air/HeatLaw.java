package dev.offtake.air;

/** Heat capacity against temperature over one range, with its integrals. All in J, kg and K. */
interface HeatLaw {
  /** Isobaric heat capacity, J/(kg K). */
  double cp(double t);

  /** Derivative of {@link #cp}, J/(kg K²). */
  double dCp(double t);

  /** Specific enthalpy, the integral of {@link #cp}, J/kg. */
  double h(double t);

  /** Writes h, cp and dcp of a temperature at once, for inner loops. */
  void fill(GasState gas, double t);

  /** Specific entropy at 1 bar, the integral of cp/T, J/(kg K). */
  double s0(double t);
}
