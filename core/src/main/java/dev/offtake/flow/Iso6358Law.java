package dev.offtake.flow;

import dev.offtake.air.GasState;

/** ISO 6358; size is the sonic conductance C, m³/(s Pa). */
public final class Iso6358Law implements FlowLaw {
  /**
   * Makes the law.
   *
   * @param b critical back-pressure ratio
   * @param m subsonic index
   * @param cracking cracking pressure Δpc, Pa
   */
  public Iso6358Law(double b, double m, double cracking) {}

  @Override
  public void evaluate(GasState one, GasState two, double size, Flow out) {
    throw new UnsupportedOperationException();
  }
}
