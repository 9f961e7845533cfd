package dev.offtake.flow;

/** The contract for a smooth-walled duct. */
class DuctLawTest extends FlowLawContract {
  @Override
  FlowLaw law() {
    return TestGas.duct(3, 2e-6, 0.4);
  }

  @Override
  double size() {
    return 4e-3;
  }
}
