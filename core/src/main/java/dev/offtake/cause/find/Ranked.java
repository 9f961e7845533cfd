package dev.offtake.cause.find;

import dev.offtake.study.Fault;
import java.util.List;

/**
 * A cause with what the readings make of it.
 *
 * @param cause what it is
 * @param chance of it, everything that was considered summing to one
 * @param best the failures to the extents that agree best
 * @param low the failures to extents below which one in twenty lies
 * @param high the failures to extents above which one in twenty lies
 * @param places of the extents: best, low and high
 * @param foretold what it foretells of each clue
 * @param fit chance that sound readings lie as far from it as these do, or farther
 * @param dormant whether nobody would have noticed it at any named power
 * @param evidence natural logarithm of the density of the readings under it
 */
public record Ranked(
    Cause cause,
    double chance,
    List<Fault> best,
    List<Fault> low,
    List<Fault> high,
    List<double[]> places,
    List<Double> foretold,
    double fit,
    boolean dormant,
    double evidence) {
  /** Keeps its lists. */
  public Ranked {
    best = List.copyOf(best);
    low = List.copyOf(low);
    high = List.copyOf(high);
    places = List.copyOf(places);
    foretold = List.copyOf(foretold);
  }
}
