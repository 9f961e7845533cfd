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
 * @param best what tells most, each where it tells most: a change of word and a number of those
 *     that are seen without a test gauge, and what only a test gauge shows plainly; empty where
 *     nothing tells
 */
public record Stretch(double from, double to, Optional<Sign.Verdict> verdict, List<Best> best) {
  /** Keeps its signs. */
  public Stretch {
    best = List.copyOf(best);
  }

  /**
   * A sign where it tells most.
   *
   * @param at the place, SI
   * @param sign what is seen there
   */
  public record Best(double at, Sign sign) {}
}
