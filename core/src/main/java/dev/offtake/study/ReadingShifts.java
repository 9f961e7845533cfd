package dev.offtake.study;

import dev.offtake.solve.Quantity;
import dev.offtake.solve.Sensitivities;
import java.util.Optional;

/**
 * Shifts of a crossing at which a reading g passes zero: −(∂g/∂θ)/(∂g/∂core) times the way to the
 * band's end, both slopes from the solved state at the crossing.
 */
final class ReadingShifts implements Shifts {
  /** Way along the core speed by which the slope is measured. */
  private static final double WAY = 0.01;

  /** So near to zero, as core speed, a reading is at a crossing through which it passes. */
  private static final double NEAR = 1e-5;

  private final Sensitivities.Gradient gradient;
  private final double perSpeed;

  private ReadingShifts(Sensitivities.Gradient gradient, double perSpeed) {
    this.gradient = gradient;
    this.perSpeed = perSpeed;
  }

  /**
   * Prepares.
   *
   * @param course what is asked at other speeds
   * @param reading passes zero at the crossing
   * @param core the crossing, a fraction
   * @return empty where the reading does not pass through zero but jumps over it
   */
  static Optional<Shifts> of(Course course, Quantity reading, double core) {
    return course
        .at(core)
        .flatMap(Sensitivities::at)
        .map(slopes -> slopes.of(reading))
        .flatMap(gradient -> of(course, gradient, core));
  }

  private static Optional<Shifts> of(Course course, Sensitivities.Gradient gradient, double core) {
    double perSpeed = gradient.toward(course.question(core + WAY).conditions()) / WAY;
    boolean passes = Math.abs(gradient.value()) <= Math.abs(perSpeed) * NEAR;
    return passes ? Optional.of(new ReadingShifts(gradient, perSpeed)) : Optional.empty();
  }

  @Override
  public double of(Band band) {
    double shift = -gradient.byNumber(band.part(), band.which()) * band.end() / perSpeed;
    return Math.max(-Crossing.FARTHEST, Math.min(Crossing.FARTHEST, shift));
  }
}
