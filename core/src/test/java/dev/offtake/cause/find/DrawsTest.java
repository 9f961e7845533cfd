package dev.offtake.cause.find;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** How many draws are enough, and what their mean is, beside closed forms. */
class DrawsTest {
  /** Logarithms of weights that are lognormal with mean 1. */
  private static double[] lognormal(int count, double sigma, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    double[] logs = new double[count];
    Arrays.setAll(logs, i -> sigma * random.nextGaussian() - sigma * sigma / 2);
    return logs;
  }

  @Test
  void noDrawsAndHopelessDrawsAreNeverSure() {
    assertThat(Draws.sure(new double[0], 0)).isFalse();
    double[] none = new double[40];
    Arrays.fill(none, Double.NEGATIVE_INFINITY);
    assertThat(Draws.sure(none, 0)).isFalse();
  }

  /** A lognormal weight's mean has the relative error √((e^σ² − 1)/n). */
  @Test
  void theLikeliestIsSureWithATenth() {
    double sigma = Math.sqrt(Math.log(2)); // an error of 1/√n
    assertThat(Draws.sure(lognormal(60, sigma, 1), 0)).isFalse();
    assertThat(Draws.sure(lognormal(400, sigma, 1), 0)).isTrue();
  }

  @Test
  void oneFarBehindIsSureWithMoreButNotWithAnything() {
    double sigma = Math.sqrt(Math.log(2));
    assertThat(Draws.sure(lognormal(60, sigma, 1), 2)).isTrue();
    assertThat(Draws.sure(lognormal(12, sigma, 1), 20)).isFalse();
  }

  @Test
  void theMeanIsThatOfTheWeightsAndOneLuckyDrawDoesNotRule() {
    assertThat(Draws.truncated(lognormal(4000, 0.5, 2))).isCloseTo(0, within(0.03));
    double[] lucky = new double[100];
    lucky[17] = Math.log(1e6);
    // No weight counts for more than √100 times the mean of all.
    assertThat(Draws.truncated(lucky)).isLessThan(Math.log(1e4));
  }
}
