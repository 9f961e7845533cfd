package dev.offtake.logic;

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
}
