package dev.offtake.cause.find;

import java.util.List;

/**
 * A cause that is still likely while a check is planned.
 *
 * @param cause what; {@link Cause#NOTHING} for a sound system
 * @param number in the ranking; −1 for a sound system
 * @param group number of the group of causes that the readings cannot part from it
 * @param chance of it
 * @param places its extents: those that agree best, and both ends of what is likely
 * @param residual of the readings against what it foretells
 */
record Suspect(
    Cause cause, int number, int group, double chance, List<double[]> places, double[] residual) {
  /** How much each of its places counts. */
  static final double[] WEIGHTS = {0.5, 0.25, 0.25};
}
