package dev.offtake.flow;

import dev.offtake.air.GasState;

/**
 * Adiabatic pipe flow with friction (Fanno); size is the flow area, m², from which the diameter
 * follows.
 */
public final class DuctLaw implements FlowLaw {
  /**
   * Makes the law.
   *
   * @param length of the duct, m
   * @param roughness of the wall, m
   * @param k sum of loss coefficients of bends and fittings
   */
  public DuctLaw(double length, double roughness, double k) {}

  @Override
  public void evaluate(GasState one, GasState two, double size, Flow out) {
    throw new UnsupportedOperationException();
  }
}
