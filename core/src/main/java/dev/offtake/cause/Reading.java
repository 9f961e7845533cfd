package dev.offtake.cause;

import java.util.Optional;

/**
 * One thing that was read.
 *
 * @param about what was looked at
 * @param value what was read
 * @param with test gauge it was read with; all readings with it share its constant error. Empty
 *     when it was read off the system's own gauge, or without a gauge
 * @param note what the reader adds; empty when nothing
 */
public record Reading(About about, Value value, Optional<UsedGauge> with, String note) {
  /** Whether somebody looked. */
  public boolean taken() {
    return !(value instanceof Value.NotRead);
  }
}
