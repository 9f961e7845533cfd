package dev.offtake.cause.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.special.Erf;
import org.hipparchus.special.Gamma;
import org.junit.jupiter.api.Test;

/** Tails of distributions against the special functions of Hipparchus. */
class FitTest {
  @Test
  void theTailOfChiSquaredIsWithinAboutOneInAHundred() {
    for (int readings = 1; readings <= 20; readings++) {
      for (double misfit = 0.1; misfit < 60; misfit += 0.7) {
        double exact = Gamma.regularizedGammaQ(readings / 2.0, misfit / 2);
        assertThat(Fit.chance(misfit, readings)).isCloseTo(exact, within(0.011));
      }
    }
  }

  @Test
  void theNormalDistributionIsWithinAMillionth() {
    for (double x = -8; x <= 8; x += 0.01) {
      assertThat(Gauss.below(x)).isCloseTo(0.5 * Erf.erfc(-x / Math.sqrt(2)), within(1e-7));
    }
  }

  /** Moments of the standard normal: 1, 0, 1, 0, 3, 0, 15 (any textbook). */
  @Test
  void meansOfPowersAreTheMoments() {
    double[] moments = {1, 0, 1, 0, 3, 0, 15, 0, 105, 0, 945, 0, 10_395};
    for (int power = 0; power < moments.length; power++) {
      int p = power;
      assertThat(Gauss.mean(x -> Math.pow(x, p), 0, 1))
          .isCloseTo(moments[power], within(1e-9 * Math.max(1, moments[power])));
    }
  }
}
