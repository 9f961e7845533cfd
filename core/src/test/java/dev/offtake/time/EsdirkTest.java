package dev.offtake.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** The order conditions of Butcher (1963), and what makes the method damp what is stiff. */
class EsdirkTest {
  private static final double ROUNDING = 1e-14;
  private static final int LAST = Esdirk.STAGES - 1;

  private static double weight(int stage, boolean embedded) {
    return embedded ? Esdirk.embedded(stage) : Esdirk.a(LAST, stage);
  }

  private static double sum(boolean embedded, int power) {
    double sum = 0;
    for (int i = 0; i < Esdirk.STAGES; i++) {
      sum += weight(i, embedded) * Math.pow(Esdirk.c(i), power);
    }
    return sum;
  }

  @Test
  void answersToThirdOrder() {
    assertThat(sum(false, 0)).isCloseTo(1, within(ROUNDING));
    assertThat(sum(false, 1)).isCloseTo(1 / 2.0, within(ROUNDING));
    assertThat(sum(false, 2)).isCloseTo(1 / 3.0, within(ROUNDING));
    double tall = 0;
    for (int i = 0; i < Esdirk.STAGES; i++) {
      for (int j = 0; j <= i && i > 0; j++) {
        tall += weight(i, false) * Esdirk.a(i, j) * Esdirk.c(j);
      }
    }
    assertThat(tall).isCloseTo(1 / 6.0, within(ROUNDING));
  }

  @Test
  void comparesWithSecondOrder() {
    assertThat(sum(true, 0)).isCloseTo(1, within(ROUNDING));
    assertThat(sum(true, 1)).isCloseTo(1 / 2.0, within(ROUNDING));
    assertThat(Math.abs(sum(true, 2) - 1 / 3.0)).isGreaterThan(1e-3);
  }

  @Test
  void stagesStandWhereTheirWeightsSay() {
    for (int i = 1; i < Esdirk.STAGES; i++) {
      double sum = 0;
      for (int j = 0; j <= i; j++) {
        sum += Esdirk.a(i, j);
      }
      assertThat(sum).isCloseTo(Esdirk.c(i), within(ROUNDING));
    }
  }

  /**
   * Growth of y′ = λy over a step, by its stages. Nowhere left of the axis does it grow, and far
   * out it vanishes.
   */
  @Test
  void dampsWhatIsStiff() {
    assertThat(growth(-1e8, 0)).isLessThan(1e-6);
    for (double x = 1e-3; x < 1e5; x *= 1.3) {
      assertThat(growth(-x, 0)).isLessThanOrEqualTo(1);
      assertThat(growth(0, x)).isLessThanOrEqualTo(1 + 1e-12);
      assertThat(growth(-x, x)).isLessThanOrEqualTo(1);
    }
  }

  private static double growth(double re, double im) {
    double[][] y = new double[Esdirk.STAGES][];
    y[0] = new double[] {1, 0};
    for (int i = 1; i < Esdirk.STAGES; i++) {
      double[] sum = {1, 0};
      for (int j = 0; j < i; j++) {
        double a = Esdirk.a(i, j);
        sum[0] += a * (re * y[j][0] - im * y[j][1]);
        sum[1] += a * (re * y[j][1] + im * y[j][0]);
      }
      double one = 1 - Esdirk.GAMMA * re;
      double two = -Esdirk.GAMMA * im;
      double square = one * one + two * two;
      y[i] =
          new double[] {
            (sum[0] * one + sum[1] * two) / square, (sum[1] * one - sum[0] * two) / square
          };
    }
    return Math.hypot(y[LAST][0], y[LAST][1]);
  }
}
