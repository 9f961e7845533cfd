package dev.offtake.study;

import dev.offtake.quantity.Dimension;

/**
 * How one thing that a person can look at differs between a healthy state and another one.
 *
 * @param what what is looked at
 * @param part full name of the gauge, light, trip, user or test port
 * @param needle mark of the needle; empty where there is only one
 * @param reads what the number is, such as {@code left duct pressure}
 * @param dimension of the two numbers
 * @param healthy what it shows in the healthy state, SI, kept within its scale; 1 or 0 for what is
 *     on or off; a flow for a user
 * @param now what it shows in the other state, likewise
 * @param limit change from which on it is plain, SI; NaN where only a change of word counts
 * @param before state in the healthy state, a stable word; for a needle {@link #PEGGED} or empty
 * @param after state in the other state, likewise
 * @param verdict whether it would be noticed
 * @param seen where it is seen, such as {@code flight deck}; empty when the file does not say
 */
public record Sign(
    What what,
    String part,
    String needle,
    String reads,
    Dimension dimension,
    double healthy,
    double now,
    double limit,
    String before,
    String after,
    Verdict verdict,
    String seen) {

  /** State of a needle against an end of its scale: the value lies beyond. */
  public static final String PEGGED = "pegged";

  /** What is looked at. */
  public enum What {
    /** A needle of a gauge. */
    NEEDLE,
    /** A shift of an engine's own gauge. */
    ENGINE,
    /** A light that is lit or not. */
    LIGHT,
    /** A trip that has latched or not. */
    TRIP,
    /** A user that has enough air or goes short. */
    USER
  }

  /** Whether a change would be noticed; the best comes first. */
  public enum Verdict {
    /** Nobody can miss it who compares. */
    PLAIN,
    /** The needle moves, by no more than the gauge may be wrong. */
    LOST,
    /** Nothing moves that could be read. */
    HIDDEN
  }

  /** Whether it is seen only with a test gauge that is fitted for it. */
  public boolean atPort() {
    return seen.contains("port");
  }

  /** Change, SI. */
  public double change() {
    return now - healthy;
  }

  /** How large the change is against what makes it plain; for a change of word always above 1. */
  public double weight() {
    if (what != What.NEEDLE && what != What.ENGINE) {
      return verdict == Verdict.PLAIN ? Double.POSITIVE_INFINITY : 0;
    }
    return Math.abs(change()) / limit;
  }
}
