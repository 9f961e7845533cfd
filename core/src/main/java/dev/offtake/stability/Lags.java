package dev.offtake.stability;

import dev.offtake.part.Part;

/**
 * How slowly a valve, or the valve within a flow user, follows what moves it, as time constants of
 * first-order lags, s.
 *
 * @param senseLine held pressure at the control head; 0 for none
 * @param sensor temperature at the sensor; 0 for none
 * @param servo filling of the servo chamber; 0 for none
 * @param position disc after its actuator; above 0
 */
public record Lags(double senseLine, double sensor, double servo, double position) {
  /** Check and relief valves, s (common practice, no source). */
  private static final double FLAPPER = 0.02;

  /** A few feet of quarter-inch line, s (common practice, no source). */
  private static final double SENSE_LINE = 0.005;

  /** A sheathed sensor in a duct with flow, s (common practice, no source). */
  private static final double SENSOR = 5;

  /**
   * Servo chamber, s: a stroke takes some seconds (common practice, no source). Regulators are made
   * slow in one place, so that their gain of thirty to sixty does not make them hunt.
   */
  private static final double SERVO = 2;

  /** Disc and piston of a three-inch valve, s (common practice, no source). */
  private static final double DISC = 0.01;

  /** What a regulator has of quick lags, s. */
  static final double QUICK = SENSE_LINE + DISC;

  /** A flow user's own valve; faster upsets find its area fixed, s (common practice, no source). */
  private static final double USER = 2;

  /** Checks its times. */
  public Lags {
    if (!(senseLine >= 0 && sensor >= 0 && servo >= 0 && position > 0)) {
      throw new IllegalArgumentException("a lag is not negative, and a valve's position has one");
    }
  }

  /**
   * Usual lags of a part's kind: assumptions.
   *
   * @param part a valve or a flow user
   */
  public static Lags usual(Part part) {
    return switch (part.kind()) {
      case "regulator", "temperature control valve" -> new Lags(SENSE_LINE, SENSOR, SERVO, DISC);
      case "flow user" -> new Lags(0, 0, 0, USER);
      default -> new Lags(0, 0, 0, FLAPPER);
    };
  }

  /**
   * The same valve with friction, dirt or water in it.
   *
   * @param moves how many times slower its servo and its disc are
   * @param senses how many times slower its sense line is
   */
  public Lags slower(double moves, double senses) {
    return new Lags(senses * senseLine, sensor, moves * servo, moves * position);
  }

  /** The same valve with its quick lags, sense line and disc, changed by a factor. */
  public Lags quick(double factor) {
    return new Lags(factor * senseLine, sensor, servo, factor * position);
  }
}
