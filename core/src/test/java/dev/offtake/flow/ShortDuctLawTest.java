package dev.offtake.flow;

/** The contract for a nearly lossless duct. */
class ShortDuctLawTest extends FlowLawContract {
  @Override
  FlowLaw law() {
    return TestGas.duct(0.02, 2e-6, 0);
  }

  @Override
  double size() {
    return 4e-3;
  }
}
