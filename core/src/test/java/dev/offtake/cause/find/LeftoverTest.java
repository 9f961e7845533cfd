package dev.offtake.cause.find;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The error of a model is found again in readings that were made with a known one. */
class LeftoverTest {
  private static final int READINGS = 80;
  private static final int UNKNOWNS = 5;

  private final SplittableRandom random = new SplittableRandom(20_261_128);

  /** Readings with two groups, whose errors are 0.02 and 5 times what is counted. */
  private final class Made {
    private final double[][] slopes = new double[READINGS][UNKNOWNS];
    private final double[] residual = new double[READINGS];
    private final double[] own = new double[READINGS];
    private final double[] pressure = new double[READINGS];
    private final double[] temperature = new double[READINGS];

    Made() {
      double[] theta = new double[UNKNOWNS];
      for (int k = 0; k < UNKNOWNS; k++) {
        theta[k] = random.nextGaussian();
      }
      for (int i = 0; i < READINGS; i++) {
        boolean hot = i % 2 == 0;
        pressure[i] = hot ? 0 : 100 + 300 * random.nextDouble();
        temperature[i] = hot ? 1 : 0;
        own[i] = hot ? 4 : 1;
        double model = 0.02 * pressure[i] + 5 * temperature[i];
        residual[i] = Math.sqrt(own[i] + model * model) * random.nextGaussian();
        for (int k = 0; k < UNKNOWNS; k++) {
          slopes[i][k] = 10 * random.nextGaussian();
          residual[i] += slopes[i][k] * theta[k];
        }
      }
    }

    Leftover.Estimate[] estimates() {
      return new Leftover(slopes, residual, own)
          .of(new Leftover.Group(pressure, 0.03, 0.001), new Leftover.Group(temperature, 8, 0.1));
    }
  }

  @Test
  void theErrorIsFoundWithinHalfAgain() {
    double[] pressure = new double[30];
    double[] temperature = new double[30];
    for (int round = 0; round < 30; round++) {
      Leftover.Estimate[] found = new Made().estimates();
      pressure[round] = found[0].error() / 0.02;
      temperature[round] = found[1].error() / 5;
      assertThat(found[0].freedom() + found[1].freedom())
          .isBetween((double) READINGS - UNKNOWNS, (double) READINGS);
    }
    // About 37 degrees of freedom each: a standard deviation of 1/√74, 0.12 of the value.
    assertThat(Arrays.stream(pressure).filter(s -> s > 1 / 1.5 && s < 1.5).count())
        .isGreaterThanOrEqualTo(29);
    assertThat(Arrays.stream(temperature).filter(s -> s > 1 / 1.5 && s < 1.5).count())
        .isGreaterThanOrEqualTo(29);
    assertThat(Arrays.stream(pressure).average().orElseThrow()).isCloseTo(1, within(0.12));
    assertThat(Arrays.stream(temperature).average().orElseThrow()).isCloseTo(1, within(0.12));
  }

  @Test
  void tooFewReadingsLeaveTheErrorAsItWas() {
    Leftover.Estimate[] found =
        new Leftover(new double[][] {{1}, {1}}, new double[] {9, -9}, new double[] {1, 1})
            .of(new Leftover.Group(new double[] {1, 1}, 0.5, 0.01));
    assertThat(found[0].error()).isEqualTo(0.5);
    assertThat(found[0].freedom()).isLessThan(Match.ErrorLeft.FEWEST);
  }

  @Test
  void noEstimateGoesBelowWhatTheGaugesCannotTell() {
    double[] own = {4, 4, 4, 4, 4, 4};
    Leftover.Group group =
        Leftover.Group.of(new double[] {100, 100, 100, 100, 100, 100}, 0.03, 0.005, own);
    Leftover.Estimate[] found =
        new Leftover(new double[6][1], new double[] {1, -1, 1, -1, 1, -1}, own).of(group);
    assertThat(found[0].error()).isCloseTo(2 / 100.0, within(1e-12));
  }
}
