package dev.offtake.flow;

/** The contract for a nearly lossless duct. */
class ShortDuctLawTest extends FlowLawContract {
  @Override
  FlowLaw law() {
    return new DuctLaw(0.02, 2e-6, 0, TestGas::viscosity, TestGas::dViscosity);
  }

  @Override
  double size() {
    return 4e-3;
  }
}
