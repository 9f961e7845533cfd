package dev.offtake.cause;

/**
 * Before or after a trip: two states of the same engine at the same power.
 *
 * @param when on which side of the trip
 * @param trip full name of the trip; empty when nobody said which, or when there was none
 */
public record TripMoment(When when, String trip) {
  /** No trip is spoken of. */
  public static final TripMoment NONE = new TripMoment(When.NONE, "");

  /** On which side of a trip a reading was taken. */
  public enum When {
    /** No trip is spoken of. */
    NONE,
    /** Before it tripped. */
    BEFORE,
    /** Tripped, and not reset. */
    AFTER,
    /** Tripped, then reset, and it stayed reset. */
    RESET_HELD,
    /** Tripped, then reset, and it tripped again. */
    TRIPPED_AGAIN
  }

  /** As a file writes it; empty for none. */
  public String words() {
    String which = trip.isEmpty() ? "a trip" : trip;
    return switch (when) {
      case NONE -> "";
      case BEFORE -> "before " + which;
      case AFTER -> "after " + which;
      case RESET_HELD -> "after " + which + ", " + HeadReader.HELD;
      case TRIPPED_AGAIN -> "after " + which + ", " + HeadReader.AGAIN;
    };
  }
}
