package dev.offtake.flow;

/** The contract for the nozzle. */
class NozzleLawTest extends FlowLawContract {
  @Override
  FlowLaw law() {
    return new NozzleLaw();
  }

  @Override
  double size() {
    return 1e-3;
  }
}
