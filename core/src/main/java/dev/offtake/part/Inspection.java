package dev.offtake.part;

/**
 * How a failure is looked for without the gauges of the system.
 *
 * @param how what is done and what is seen when the failure is there, one sentence without a full
 *     stop
 * @param access what it takes to get there
 * @param minutes of looking itself, without getting there (common practice, no source)
 * @param tools what is needed; empty when only eyes
 */
public record Inspection(String how, Access access, double minutes, String tools) {
  /** A look that needs no tools. */
  public static Inspection look(String how, Access access, double minutes) {
    return new Inspection(how, access, minutes, "");
  }
}
