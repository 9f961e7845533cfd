package dev.offtake.stability;

import dev.offtake.part.Part;

/**
 * How slowly a valve follows what moves it, as time constants of first-order lags, s.
 *
 * @param senseLine held pressure at the control head; 0 for none
 * @param sensor temperature at the sensor; 0 for none
 * @param servo filling of the servo chamber; 0 for none
 * @param position disc after its actuator; above 0
 */
public record Lags(double senseLine, double sensor, double servo, double position) {
  /** Check and relief valves, s (design notes; common practice, no source). */
  private static final double FLAPPER = 0.02;

  /** A few feet of quarter-inch line and the chamber at its end, s (common practice, no source). */
  private static final double SENSE_LINE = 0.02;

  /** A sheathed sensor in a duct with flow, s (common practice, no source). */
  private static final double SENSOR = 5;

  /** A stroke of one to two seconds, s (common practice, no source). */
  private static final double SERVO = 0.5;

  /** Disc and piston of a three-inch valve, s (common practice, no source). */
  private static final double DISC = 0.03;

  /** Checks its times. */
  public Lags {
    if (!(senseLine >= 0 && sensor >= 0 && servo >= 0 && position > 0)) {
      throw new IllegalArgumentException("a lag is not negative, and a valve's position has one");
    }
  }

  /**
   * Usual lags of a part's kind: assumptions.
   *
   * @param part a valve
   */
  public static Lags usual(Part part) {
    return switch (part.kind()) {
      case "regulator", "temperature control valve" -> new Lags(SENSE_LINE, SENSOR, SERVO, DISC);
      default -> new Lags(0, 0, 0, FLAPPER);
    };
  }
}
