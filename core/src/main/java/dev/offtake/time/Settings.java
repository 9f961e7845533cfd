package dev.offtake.time;

import dev.offtake.part.Part;
import java.util.List;
import java.util.function.Function;

/**
 * How a drive is played.
 *
 * @param tolerance error that one step may make: as a share of an absolute pressure or temperature,
 *     and as a share of a stroke
 * @param instants error of the time of an event, s
 * @param mostSteps steps after which it gives up
 * @param longest longest step, s; a method that damps what is quick would hold a valve at rest that
 *     hunts, unless its steps are short against the swings
 * @param fine stretches in which steps are shorter still, so that swings are followed
 * @param paces how each valve and flow user moves
 * @param walls whether the metal around the air stores heat
 * @param limits what is watched
 */
public record Settings(
    double tolerance,
    double instants,
    int mostSteps,
    double longest,
    List<Fine> fine,
    Function<Part, Pace> paces,
    boolean walls,
    List<Limit> limits) {
  /** Error that one step may make where nothing else is asked. */
  public static final double USUAL_TOLERANCE = 1e-3;

  private static final double USUAL_INSTANTS = 1e-3;
  private static final int USUAL_STEPS = 200_000;

  /** Checks its numbers. */
  public Settings {
    fine = List.copyOf(fine);
    limits = List.copyOf(limits);
    if (!(tolerance >= 1e-10 && tolerance <= 0.1 && instants > 0 && mostSteps > 0 && longest > 0)) {
      throw new IllegalArgumentException(
          "tolerance from 1e-10 to 0.1, instants above 0 s and at least one step are wanted");
    }
  }

  /**
   * A limit that is watched.
   *
   * @param point full name of the point
   * @param temperature whether its temperature is watched, K, else its static pressure, Pa absolute
   * @param above whether the limit is passed upwards
   * @param value the limit
   */
  public record Limit(String point, boolean temperature, boolean above, double value) {}

  /**
   * A stretch of time in which a swing is followed with short steps. Where it stays small and no
   * longer grows, the rest of the stretch is played with long ones.
   *
   * @param from s
   * @param until s
   * @param longest longest step, s
   * @param least so long it is followed in any case, s: what grows slowly must have had its time
   */
  public record Fine(double from, double until, double longest, double least) {
    /** Whether an instant belongs to it. */
    boolean holds(double time) {
      return time >= from && time < until;
    }
  }

  /** Usual tolerance and paces, no limits. */
  public static Settings usual() {
    return new Settings(
        USUAL_TOLERANCE,
        USUAL_INSTANTS,
        USUAL_STEPS,
        Double.POSITIVE_INFINITY,
        List.of(),
        Pace::usual,
        true,
        List.of());
  }

  /** The same with another tolerance. */
  public Settings withTolerance(double other) {
    return new Settings(other, instants, mostSteps, longest, fine, paces, walls, limits);
  }

  /** The same with steps of at most a length, s. */
  public Settings withLongest(double other) {
    return new Settings(tolerance, instants, mostSteps, other, fine, paces, walls, limits);
  }

  /** The same with stretches in which swings are followed. */
  public Settings withFine(List<Fine> other) {
    return new Settings(tolerance, instants, mostSteps, longest, other, paces, walls, limits);
  }

  /** The same with other paces. */
  public Settings withPaces(Function<Part, Pace> other) {
    return new Settings(tolerance, instants, mostSteps, longest, fine, other, walls, limits);
  }

  /** The same with other limits. */
  public Settings withLimits(List<Limit> other) {
    return new Settings(tolerance, instants, mostSteps, longest, fine, paces, walls, other);
  }

  /** The same with walls that store heat, or that follow at once. */
  public Settings withWalls(boolean store) {
    return new Settings(tolerance, instants, mostSteps, longest, fine, paces, store, limits);
  }
}
