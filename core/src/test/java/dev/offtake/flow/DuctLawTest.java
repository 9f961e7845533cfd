package dev.offtake.flow;

/** The contract for a smooth-walled duct. */
class DuctLawTest extends FlowLawContract {
  @Override
  FlowLaw law() {
    return new DuctLaw(3, 2e-6, 0.4, TestGas::viscosity, TestGas::dViscosity);
  }

  @Override
  double size() {
    return 4e-3;
  }
}
