package dev.offtake.flow;

import dev.offtake.air.GasState;

/**
 * Nozzle whose diffuser recovers a share of the throat's dynamic head; size is the effective throat
 * area, m².
 */
public final class VenturiLaw implements FlowLaw {
  /**
   * Makes the law.
   *
   * @param recovery share of the difference between inlet total and throat static pressure that is
   *     recovered, 0..0.95
   */
  public VenturiLaw(double recovery) {}

  @Override
  public void evaluate(GasState one, GasState two, double size, Flow out) {
    throw new UnsupportedOperationException();
  }
}
