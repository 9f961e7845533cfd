package dev.offtake.flow;

/** The contract for a butterfly valve. */
class ValveLawTest extends FlowLawContract {
  @Override
  FlowLaw law() {
    return new ValveLaw(0.4);
  }

  @Override
  double size() {
    return 2e-3;
  }
}
