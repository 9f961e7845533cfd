package dev.offtake.flow;

import dev.offtake.air.GasState;

/** Ideal nozzle; size is the effective area CdA, m². */
public final class NozzleLaw implements FlowLaw {
  @Override
  public void evaluate(GasState one, GasState two, double size, Flow out) {
    throw new UnsupportedOperationException();
  }
}
