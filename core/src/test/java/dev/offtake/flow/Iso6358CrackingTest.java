package dev.offtake.flow;

/** The contract for ISO 6358 behind a cracking pressure. */
class Iso6358CrackingTest extends FlowLawContract {
  @Override
  FlowLaw law() {
    return new Iso6358Law(0.3, 0.5, 5000);
  }

  @Override
  double size() {
    return 2e-6;
  }
}
