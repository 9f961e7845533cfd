package dev.offtake.cause.find;

import dev.offtake.cause.Recording;

/**
 * An instant of a recording that is weighed.
 *
 * @param recording whose profile has to be played to come there
 * @param seconds on the clock of the recording
 */
public record Instant(Recording recording, double seconds) {}
