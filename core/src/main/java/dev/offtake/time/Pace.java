package dev.offtake.time;

import dev.offtake.part.Part;
import dev.offtake.stability.Lags;

/**
 * How a valve, or the valve within a flow user, moves.
 *
 * @param lags first-order lags, as small motions have them
 * @param rate most strokes in a second that the servo chamber lets it make
 * @param friction share of its stroke by which its servo must be ahead before it moves
 * @param swings frequency at which its disc would swing freely, Hz; 0 for one without inertia,
 *     which follows with its lag
 * @param damping damping ratio of a disc that swings
 */
public record Pace(Lags lags, double rate, double friction, double swings, double damping) {
  /** Most strokes in a second of a regulator (common practice, no source). */
  private static final double RATE = 0.5;

  /** Damping ratio of a flapper that swings (an assumption). */
  private static final double DAMPING = 0.1;

  /** Checks its numbers. */
  public Pace {
    if (!(rate > 0 && friction >= 0 && friction < 1 && swings >= 0 && damping >= 0)) {
      throw new IllegalArgumentException(
          "a pace has a rate above 0, friction from 0 to below 1, and no negative swings");
    }
  }

  /** Usual pace of a part's kind: assumptions. */
  public static Pace usual(Part part) {
    Lags lags = Lags.usual(part);
    double rate = lags.servo() > 0 ? RATE : Double.POSITIVE_INFINITY;
    return new Pace(lags, rate, 0, 0, DAMPING);
  }

  /** The same with other lags. */
  public Pace withLags(Lags other) {
    return new Pace(other, rate, friction, swings, damping);
  }

  /** The same with another rate, strokes per second. */
  public Pace withRate(double other) {
    return new Pace(lags, other, friction, swings, damping);
  }

  /** The same with friction, as a share of the stroke. */
  public Pace withFriction(double other) {
    return new Pace(lags, rate, other, swings, damping);
  }

  /** The same with a disc that has inertia. */
  public Pace swinging(double hertz, double ratio) {
    return new Pace(lags, rate, friction, hertz, ratio);
  }
}
