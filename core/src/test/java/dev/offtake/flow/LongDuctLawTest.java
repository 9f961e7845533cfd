package dev.offtake.flow;

/** The contract for a long rough line of small bore. */
class LongDuctLawTest extends FlowLawContract {
  @Override
  FlowLaw law() {
    return new DuctLaw(200, 1e-4, 2, TestGas::viscosity, TestGas::dViscosity);
  }

  @Override
  double size() {
    return 2e-5;
  }
}
