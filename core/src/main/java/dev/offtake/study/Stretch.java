package dev.offtake.study;

import java.util.List;
import java.util.Optional;

/**
 * A stretch of a curve along which a person could tell a broken system from the healthy one equally
 * well.
 *
 * @param from where it begins, SI
 * @param to where it ends, SI, not below {@code from}
 * @param verdict of what is seen without a test gauge; empty where one of the two has no answer
 * @param at where most is to be seen, SI
 * @param signs what can be looked at there; empty without an answer
 */
public record Stretch(
    double from, double to, Optional<Sign.Verdict> verdict, double at, List<Sign> signs) {
  /** Keeps its signs. */
  public Stretch {
    signs = List.copyOf(signs);
  }
}
