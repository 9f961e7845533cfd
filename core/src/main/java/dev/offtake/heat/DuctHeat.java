package dev.offtake.heat;

import dev.offtake.air.Air;
import dev.offtake.air.GasState;

/**
 * Heat that flowing air loses through the wall of its duct to constant surroundings.
 *
 * <p>T₂ = Tₛ + (T₁ − Tₛ)·exp(−UA/(ṁ·cp)) with the heat capacity of the air that enters (Incropera
 * and DeWitt, Fundamentals of Heat and Mass Transfer, internal flow with constant surroundings).
 * Still air takes the temperature of the surroundings, and all derivatives vanish there.
 *
 * <p>Mutable result object: make one, evaluate often; {@link #evaluate} does not allocate.
 */
public final class DuctHeat {
  /** Exponent beyond which nothing of the entering temperature is left. */
  private static final double SPENT = 700;

  /** Temperature at the outlet, K. */
  public double t;

  /** Enthalpy at the outlet, J/kg. */
  public double h;

  /** Derivative of {@link #h} by the flow, J/kg per kg/s. */
  public double dMdot;

  /** Derivative of {@link #h} by the temperature at the inlet, J/(kg K). */
  public double dT1;

  /** Derivative of {@link #t} by the flow, K per kg/s. */
  public double dTdMdot;

  /** Derivative of {@link #t} by the temperature at the inlet. */
  public double dTdT1;

  /** Makes one; the outputs are zero until evaluated. */
  public DuctHeat() {}

  /**
   * Evaluates the outlet.
   *
   * @param mdot flow, kg/s; a magnitude, below 0 counts as 0
   * @param up air that enters
   * @param around temperature of the surroundings, K
   * @param ua conductance from air to surroundings, W/K, not negative
   */
  public void evaluate(double mdot, GasState up, double around, double ua) {
    double units = ua == 0 ? 0 : ua / (Math.max(mdot, 0) * up.cp);
    double left = 0;
    dTdMdot = 0;
    dTdT1 = 0;
    double above = up.t - around;
    if (units < SPENT) {
      left = Math.exp(-units);
      dTdMdot = units == 0 ? 0 : above * left * units / mdot;
      dTdT1 = left * (1 + above * units * up.dcp / up.cp);
    }
    t = around + above * left;
    h = Air.h(t);
    double cp = Air.cp(t);
    dMdot = cp * dTdMdot;
    dT1 = cp * dTdT1;
  }
}
