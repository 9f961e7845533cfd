package dev.offtake.time;

/**
 * Something that happened.
 *
 * @param seconds when
 * @param kind what sort of thing
 * @param part full name of the part, or of the point whose limit is passed
 * @param before what it did, in a word that does not change
 * @param after what it does from now on
 * @param word what is printed beside the name from now on
 * @param why the reason, one sentence without a full stop; may be empty
 */
public record Event(
    double seconds, Kind kind, String part, String before, String after, String word, String why) {
  /** Sorts of events. */
  public enum Kind {
    /** A trip latched. */
    TRIP,
    /** A trip let go. */
    RESET,
    /** A relief valve popped or reseated. */
    RELIEF,
    /** Switches, power or trips command a valve, user, supply or light otherwise. */
    COMMAND,
    /** A part does something else than before. */
    CHANGEOVER,
    /** A stream reached the speed of sound, or fell below it. */
    CHOKE,
    /** A watched limit was passed, or was come back from. */
    LIMIT,
    /** A valve swings faster than can be followed and is told by its mean from now on. */
    FLUTTER
  }
}
