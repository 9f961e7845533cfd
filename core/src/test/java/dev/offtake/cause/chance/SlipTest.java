package dev.offtake.cause.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** A slip against the sum over which reading it was, each weighed without it. */
class SlipTest {
  private static final double[][] SLOPES = {{1, 0.5}, {0.8, -0.2}, {1.1, 0.1}};
  private static final double[] VARIANCE = {0.5, 0.4, 0.6};
  private static final double[] RESIDUAL = {0.3, 7, -0.1};
  private static final Slip SLIP = new Slip(0.01, new double[] {80, 80, 50});

  private final LinearModel all = new LinearModel(SLOPES, VARIANCE);

  @Test
  void itsEvidenceIsTheSumOverWhichOneWasMisread() {
    double sum = 0.99 * 0.99 * 0.99 * Math.exp(all.logEvidence(RESIDUAL));
    for (int i = 0; i < 3; i++) {
      double anywhere = Math.exp(without(i)) / SLIP.scale()[i];
      sum += 0.99 * 0.99 * 0.01 / 2 * (anywhere + Math.exp(wider(i)));
    }

    assertThat(Math.exp(SLIP.logEvidence(all, RESIDUAL)))
        .isCloseTo(sum, within(1e-12 + 1e-9 * sum));
  }

  /** The model with the reading's own error wider by a tenth of its scale. */
  private static double wider(int reading) {
    double[] variance = VARIANCE.clone();
    variance[reading] += SLIP.scale()[reading] * SLIP.scale()[reading] / 100;
    return new LinearModel(SLOPES, variance).logEvidence(RESIDUAL);
  }

  private static double without(int reading) {
    double[][] slopes = new double[2][];
    double[] variance = new double[2];
    double[] residual = new double[2];
    int at = 0;
    for (int i = 0; i < 3; i++) {
      if (i != reading) {
        slopes[at] = SLOPES[i];
        variance[at] = VARIANCE[i];
        residual[at++] = RESIDUAL[i];
      }
    }
    return new LinearModel(slopes, variance).logEvidence(residual);
  }

  @Test
  void theReadingThatLiesFarOffIsTheLikelySlip() {
    double[] chances = SLIP.chances(all, RESIDUAL);

    assertThat(chances[1]).isGreaterThan(0.95);
    assertThat(chances[0] + chances[2]).isLessThan(0.01);
  }
}
