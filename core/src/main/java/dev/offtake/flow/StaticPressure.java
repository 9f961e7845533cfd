package dev.offtake.flow;

import dev.offtake.air.GasState;

/** ln(total/static pressure) at a bore from the local flow. */
public final class StaticPressure {
  /** ln(p_total/p_static), zero or more. */
  public double lnRatio;

  /** Its partial by mass flow, s/kg. */
  public double dMdot;

  /** Its partial by ln of total pressure. */
  public double dLnP;

  /** Its partial by total temperature, 1/K. */
  public double dT;

  /**
   * Evaluates.
   *
   * @param mdot kg/s, either sign
   * @param gas total state
   * @param area of the bore, m²
   */
  public void evaluate(double mdot, GasState gas, double area) {
    throw new UnsupportedOperationException();
  }
}
