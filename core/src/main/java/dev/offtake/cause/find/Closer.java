package dev.offtake.cause.find;

import java.util.List;
import java.util.function.Function;

/** Weighs a cause at more and more places, where its mass lies, until its evidence rests. */
final class Closer {
  /** Evenly spread places to begin with. */
  private static final int MANY = 11;

  private static final int ROUNDS = 4;

  /** A stretch with more of the mass is solved in its middle. */
  private static final double HEAVY = 0.08;

  /** The evidence rests when it moves by less. */
  private static final double RESTS = 0.02;

  private final Weigher weigher;
  private final Course.Solver solver;

  /**
   * Prepares.
   *
   * @param solver foretells at places
   */
  Closer(Weigher weigher, Course.Solver solver) {
    this.weigher = weigher;
    this.solver = solver;
  }

  /**
   * Weighs.
   *
   * @param rough the cause, weighed at a few places
   * @param slopes of the forecasts at a place, by what nobody knows
   */
  Weighed weigh(Weighed rough, Function<double[], double[][]> slopes) {
    Course course = Course.of(rough.cause(), MANY, solver).orElse(rough.course());
    Weighed weighed = weigher.weigh(course, slopes.apply(rough.place()));
    for (int round = 0; round < ROUNDS; round++) {
      List<Double> finer = course.finer(weighed.mass(), HEAVY);
      course = course.with(finer, solver);
      Weighed next = weigher.weigh(course, slopes.apply(weighed.place()));
      boolean rests = Math.abs(next.evidence() - weighed.evidence()) < RESTS;
      weighed = next;
      if (finer.isEmpty() || rests) {
        break;
      }
    }
    return weighed;
  }
}
