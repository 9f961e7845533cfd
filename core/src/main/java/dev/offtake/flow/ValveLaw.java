package dev.offtake.flow;

import dev.offtake.air.GasState;

/** IEC 60534 gas law on the low-Δp effective area; size is that area, m². */
public final class ValveLaw implements FlowLaw {
  /**
   * Makes the law.
   *
   * @param xT pressure ratio factor x_T
   */
  public ValveLaw(double xT) {}

  @Override
  public void evaluate(GasState one, GasState two, double size, Flow out) {
    throw new UnsupportedOperationException();
  }
}
