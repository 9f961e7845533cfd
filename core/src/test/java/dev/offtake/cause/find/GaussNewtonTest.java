package dev.offtake.cause.find;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.SplittableRandom;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.api.Test;

/**
 * The most probable unknowns against Bayesian linear regression in closed form (Bishop, Pattern
 * Recognition and Machine Learning, 2006, equations 3.53 and 3.54) by Hipparchus, and against a
 * search through all values.
 */
class GaussNewtonTest {
  private final SplittableRandom random = new SplittableRandom(20_261_127);

  @Test
  void aStraightForecastGivesBayesianRegression() {
    for (int round = 0; round < 30; round++) {
      int m = 1 + random.nextInt(9);
      int n = 1 + random.nextInt(6);
      double[][] slopes = new double[m][n];
      double[] read = new double[m];
      double[] base = new double[m];
      double[] variance = new double[m];
      for (int i = 0; i < m; i++) {
        read[i] = 3 * random.nextGaussian();
        base[i] = random.nextGaussian();
        variance[i] = 0.05 + random.nextDouble();
        for (int k = 0; k < n; k++) {
          slopes[i][k] = random.nextGaussian();
        }
      }
      GaussNewton.Rest rest =
          GaussNewton.search(
              straight(base, slopes, new double[n]),
              theta -> Optional.of(straight(base, slopes, theta)),
              read,
              variance);

      assertThat(rest.settled()).isTrue();
      RealMatrix spread = spread(slopes, variance);
      RealVector mean = spread.operate(pull(slopes, variance, read, base));
      for (int k = 0; k < n; k++) {
        double[] unit = new double[n];
        unit[k] = 1;
        assertThat(rest.point().theta()[k]).isCloseTo(mean.getEntry(k), within(1e-9));
        assertThat(rest.model().foretell(unit).variance())
            .isCloseTo(spread.getEntry(k, k), within(1e-9));
      }
    }
  }

  private static GaussNewton.Point straight(double[] base, double[][] slopes, double[] theta) {
    double[] value = base.clone();
    for (int i = 0; i < value.length; i++) {
      for (int k = 0; k < theta.length; k++) {
        value[i] += slopes[i][k] * theta[k];
      }
    }
    return new GaussNewton.Point(theta, value, () -> slopes);
  }

  /** (I + Gᵀ·D⁻¹·G)⁻¹. */
  private static RealMatrix spread(double[][] slopes, double[] variance) {
    RealMatrix g = new Array2DRowRealMatrix(slopes);
    RealMatrix weighed = g.copy();
    for (int i = 0; i < variance.length; i++) {
      weighed.setRowVector(i, weighed.getRowVector(i).mapDivide(variance[i]));
    }
    RealMatrix precision = g.transpose().multiply(weighed);
    for (int k = 0; k < precision.getRowDimension(); k++) {
      precision.addToEntry(k, k, 1);
    }
    return new LUDecomposition(precision).getSolver().getInverse();
  }

  private static RealVector pull(
      double[][] slopes, double[] variance, double[] read, double[] base) {
    RealVector off = new ArrayRealVector(read).subtract(new ArrayRealVector(base));
    return new Array2DRowRealMatrix(slopes)
        .transpose()
        .operate(off.ebeDivide(new ArrayRealVector(variance)));
  }

  /** A forecast that bends so much that a whole first step goes too far. */
  @Test
  void aBentForecastIsFollowedToTheMostProbablePlace() {
    double read = 4;
    double variance = 0.01;
    GaussNewton.Rest rest =
        GaussNewton.search(
            bent(0),
            theta -> Optional.of(bent(theta[0])),
            new double[] {read},
            new double[] {0.01});

    double best = 0;
    double least = Double.POSITIVE_INFINITY;
    for (double theta = -3; theta < 3; theta += 1e-5) {
      double left = read - Math.exp(2 * theta);
      double cost = theta * theta + left * left / variance;
      best = cost < least ? theta : best;
      least = Math.min(cost, least);
    }
    assertThat(rest.settled()).isTrue();
    assertThat(rest.point().theta()[0]).isCloseTo(best, within(2e-4));
  }

  private static GaussNewton.Point bent(double theta) {
    double value = Math.exp(2 * theta);
    return new GaussNewton.Point(
        new double[] {theta}, new double[] {value}, () -> new double[][] {{2 * value}});
  }

  @Test
  void aForecastThatIsNowhereElseDoesNotComeToRest() {
    GaussNewton.Rest rest =
        GaussNewton.search(
            bent(0), theta -> Optional.empty(), new double[] {4}, new double[] {0.01});
    assertThat(rest.settled()).isFalse();
  }
}
