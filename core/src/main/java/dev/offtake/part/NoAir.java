package dev.offtake.part;

import java.util.List;

/** The law of a part that no air flows through. */
final class NoAir extends Element {
  @Override
  public List<Branch> branches() {
    return List.of();
  }

  @Override
  public void evaluate(Evaluation e) {}
}
