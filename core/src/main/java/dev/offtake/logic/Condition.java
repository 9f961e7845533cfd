package dev.offtake.logic;

import java.util.Optional;
import java.util.Set;

/**
 * A sentence over switches, trips, lights and values that holds or does not hold in a situation.
 */
public interface Condition {
  /**
   * Tells whether the condition holds.
   *
   * @param situation what stands now
   * @return true when it holds
   */
  boolean holds(Situation situation);

  /** The names that the condition asks about, in the order in which they are written. */
  Set<String> names();

  /** The condition as it was written. */
  String text();

  /**
   * Why the condition holds, in as few of its words as tell it: of an {@code or} the first operand
   * that holds.
   *
   * @param situation what stands now
   * @return such as {@code bleed switch is OFF}; empty when the condition does not hold
   */
  default Optional<String> because(Situation situation) {
    return holds(situation) ? Optional.of(text()) : Optional.empty();
  }
}
