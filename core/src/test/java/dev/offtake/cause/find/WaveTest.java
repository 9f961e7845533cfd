package dev.offtake.cause.find;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * Courses that swing alike but out of step look alike; what only drifts or bends does not swing.
 */
class WaveTest {
  private static final int MANY = 1000;
  private static final double LENGTH = 20;

  private interface Course {
    double at(double seconds);
  }

  private static Wave wave(Course course) {
    double[] seconds = new double[MANY];
    double[] values = new double[MANY];
    for (int i = 0; i < MANY; i++) {
      seconds[i] = LENGTH * i / (MANY - 1);
      values[i] = course.at(seconds[i]);
    }
    return Wave.of(seconds, values);
  }

  @Test
  void theStepOfASwingDoesNotCount() {
    Wave one = wave(t -> 40 + 0.1 * t + 3 * Math.sin(2 * Math.PI * 0.7 * t));
    Wave other = wave(t -> 40 + 0.1 * t + 3 * Math.cos(2 * Math.PI * 0.7 * t));

    assertThat(one.size()).isCloseTo(3, within(0.1));
    assertThat(other.size()).isCloseTo(one.size(), within(0.1));
    assertThat(one.hertz()).isCloseTo(0.7, within(0.02));
    assertThat(other.hertz()).isCloseTo(one.hertz(), within(0.02));
    assertThat(other.mean()).isCloseTo(one.mean(), within(0.1));
  }

  @Test
  void aDriftIsNoSwing() {
    Wave drifts = wave(t -> 40 + 0.5 * t);
    Wave bends = wave(t -> 40 + 0.05 * t * t);

    assertThat(drifts.size()).isLessThan(1e-9);
    assertThat(bends.hertz()).isZero();
    assertThat(bends.crossings()).isLessThan(3);
  }
}
