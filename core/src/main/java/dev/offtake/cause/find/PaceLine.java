package dev.offtake.cause.find;

import dev.offtake.stability.Lags;
import dev.offtake.time.Pace;

/** A number of how a valve moves, as a line of a profile's {@code valves} section gives it. */
public enum PaceLine {
  /** Lag of the held pressure at the control head. */
  SENSE_LINE("sense line"),
  /** Lag of the temperature at the sensor. */
  SENSOR("sensor"),
  /** Lag of the servo chamber. */
  SERVO("servo"),
  /** Lag of the disc after its actuator. */
  DISC("disc"),
  /** Least time from shut to open. */
  FULL_STROKE("full stroke"),
  /** Share of the stroke by which the servo must be ahead before it moves. */
  FRICTION("friction");

  /** What is usual for a kind may be wrong by this factor either way: an assumption. */
  static final double FACTOR = 2;

  /** Friction of a valve in service, a share of its stroke: an assumption. */
  static final double USUAL_FRICTION = 0.03;

  private static final double MOST_FRICTION = 0.5;

  private final String words;

  PaceLine(String words) {
    this.words = words;
  }

  /** As a profile writes it. */
  public String words() {
    return words;
  }

  /** Its value, s or a share; 0 or infinite where the valve has no such thing. */
  double of(Pace pace) {
    Lags lags = pace.lags();
    return switch (this) {
      case SENSE_LINE -> lags.senseLine();
      case SENSOR -> lags.sensor();
      case SERVO -> lags.servo();
      case DISC -> lags.position();
      case FULL_STROKE -> 1 / pace.rate();
      case FRICTION -> pace.friction();
    };
  }

  /** Whether a valve that moves so has it. */
  boolean in(Pace pace) {
    return this == FRICTION ? pace.lags().servo() > 0 : of(pace) > 0;
  }

  /**
   * The value some standard deviations away: a time by a factor, friction by a sum.
   *
   * @param value in force
   * @param sigmas how far
   */
  double away(double value, double sigmas) {
    // A band of a factor of two either way in which everything is alike has this deviation.
    return this == FRICTION
        ? Math.max(0, Math.min(MOST_FRICTION, value + sigmas * USUAL_FRICTION))
        : value * Math.pow(FACTOR, sigmas / Math.sqrt(3));
  }

  /** The same pace with another value. */
  Pace put(Pace pace, double value) {
    Lags lags = pace.lags();
    return switch (this) {
      case SENSE_LINE ->
          pace.withLags(new Lags(value, lags.sensor(), lags.servo(), lags.position()));
      case SENSOR ->
          pace.withLags(new Lags(lags.senseLine(), value, lags.servo(), lags.position()));
      case SERVO ->
          pace.withLags(new Lags(lags.senseLine(), lags.sensor(), value, lags.position()));
      case DISC -> pace.withLags(new Lags(lags.senseLine(), lags.sensor(), lags.servo(), value));
      case FULL_STROKE -> pace.withRate(1 / value);
      case FRICTION -> pace.withFriction(value);
    };
  }
}
