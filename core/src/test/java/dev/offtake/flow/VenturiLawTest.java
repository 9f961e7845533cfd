package dev.offtake.flow;

/** The contract for a venturi. */
class VenturiLawTest extends FlowLawContract {
  @Override
  FlowLaw law() {
    return new VenturiLaw(0.8);
  }

  @Override
  double size() {
    return 1e-3;
  }
}
