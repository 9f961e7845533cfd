package dev.offtake.cause.find;

import dev.offtake.cause.Recording;

/**
 * An instant of a recording that is weighed, or a stretch of it.
 *
 * @param recording whose profile has to be played to come there
 * @param seconds on the clock of the recording; where a stretch ends
 * @param from where a stretch begins, s; an instant begins where it ends
 */
public record Instant(Recording recording, double seconds, double from) {
  /** An instant. */
  public Instant(Recording recording, double seconds) {
    this(recording, seconds, seconds);
  }

  /** Whether it is a stretch, in which something swings. */
  public boolean lasts() {
    return seconds > from;
  }
}
