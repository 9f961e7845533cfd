package dev.offtake.flow;

/** The contract for ISO 6358. */
class Iso6358LawTest extends FlowLawContract {
  @Override
  FlowLaw law() {
    return new Iso6358Law(0.3, 0.55, 0);
  }

  @Override
  double size() {
    return 2e-6;
  }
}
