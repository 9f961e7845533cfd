package dev.offtake.cause.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.api.Test;

/**
 * The linear model against Bayesian linear regression in closed form (Bishop 2006, equations 3.49
 * to 3.51 and 3.86) by Hipparchus, and against its adaptive integration.
 */
class LinearModelTest {
  private final SplittableRandom random = new SplittableRandom(20_261_126);

  @Test
  void itsEvidenceIsThatOfBayesianRegression() {
    for (int round = 0; round < 50; round++) {
      int m = 1 + random.nextInt(8);
      int n = 1 + random.nextInt(20);
      double[][] slopes = matrix(m, n);
      double[] variance = positive(m);
      double[] residual = vector(m);
      LinearModel model = new LinearModel(slopes, variance);

      assertThat(model.logEvidence(residual))
          .isCloseTo(bishop(slopes, variance, residual), within(1e-8));
    }
  }

  /** Equation 3.86 with prior precision 1 and the errors whitened first. */
  private static double bishop(double[][] slopes, double[] variance, double[] residual) {
    int m = variance.length;
    int n = slopes[0].length;
    RealMatrix phi = new Array2DRowRealMatrix(m, n);
    RealVector t = new ArrayRealVector(m);
    double scale = 0;
    for (int i = 0; i < m; i++) {
      double s = Math.sqrt(variance[i]);
      scale -= Math.log(s);
      t.setEntry(i, residual[i] / s);
      for (int k = 0; k < n; k++) {
        phi.setEntry(i, k, slopes[i][k] / s);
      }
    }
    RealMatrix precision = phi.transpose().multiply(phi);
    for (int k = 0; k < n; k++) {
      precision.addToEntry(k, k, 1);
    }
    CholeskyDecomposition cholesky = new CholeskyDecomposition(precision, 1e-9, 1e-12);
    RealVector mean = cholesky.getSolver().solve(phi.transpose().operate(t));
    double miss = t.subtract(phi.operate(mean)).dotProduct(t.subtract(phi.operate(mean)));
    double fit = 0.5 * (miss + mean.dotProduct(mean));
    return scale
        - fit
        - 0.5 * Math.log(cholesky.getDeterminant())
        - 0.5 * m * Math.log(2 * Math.PI);
  }

  @Test
  void itsEvidenceIsTheIntegralOverTheUnknown() {
    LinearModel model = new LinearModel(new double[][] {{1.5}, {-0.4}}, new double[] {0.3, 0.8});
    double[] residual = {0.9, -0.2};
    UnivariateFunction density =
        theta ->
            normal(theta, 1)
                * normal(residual[0] - 1.5 * theta, 0.3)
                * normal(residual[1] + 0.4 * theta, 0.8);
    double integral =
        new IterativeLegendreGaussIntegrator(16, 1e-10, 1e-12)
            .integrate(1_000_000, density, -12, 12);

    assertThat(model.logEvidence(residual)).isCloseTo(Math.log(integral), within(1e-8));
  }

  private static double normal(double x, double variance) {
    return Math.exp(-0.5 * x * x / variance) / Math.sqrt(2 * Math.PI * variance);
  }

  @Test
  void oneReadingAgainstTheOthersIsTheRatioOfEvidences() {
    double[][] slopes = matrix(5, 7);
    double[] variance = positive(5);
    double[] residual = vector(5);
    LinearModel all = new LinearModel(slopes, variance);
    LinearModel four = new LinearModel(Arrays.copyOf(slopes, 4), Arrays.copyOf(variance, 4));

    double ratio = all.logEvidence(residual) - four.logEvidence(Arrays.copyOf(residual, 4));

    assertThat(all.against(residual, 4).logDensity()).isCloseTo(ratio, within(1e-9));
  }

  @Test
  void drawsHaveTheMeanAndTheSpreadOfWhatReadingsMakeOfTheUnknowns() {
    double[][] slopes = matrix(3, 4);
    double[] variance = positive(3);
    double[] residual = vector(3);
    LinearModel model = new LinearModel(slopes, variance);
    double[] asked = {0.3, -1, 0.5, 2};
    LinearModel.Foretold foretold = model.foretell(asked);
    int count = 40_000;
    double sum = 0;
    double squares = 0;
    for (int i = 0; i < count; i++) {
      double[] theta = model.draw(residual, normals(4), normals(3));
      double value = 0;
      for (int k = 0; k < 4; k++) {
        value += asked[k] * theta[k];
      }
      sum += value;
      squares += value * value;
    }
    double mean = sum / count;
    double spread = squares / count - mean * mean;

    double error = 4 * Math.sqrt(foretold.variance() / count);
    assertThat(mean).isCloseTo(foretold.moves(residual), within(error));
    assertThat(spread).isCloseTo(foretold.variance(), within(0.05 * foretold.variance()));
  }

  @Test
  void whatIsForetoldIsTheConditionalOfTheJointNormal() {
    double[][] slopes = matrix(3, 5);
    double[] variance = positive(3);
    double[] residual = vector(3);
    double[] asked = vector(5);
    RealMatrix g = new Array2DRowRealMatrix(slopes);
    RealMatrix s = g.multiply(g.transpose());
    for (int i = 0; i < 3; i++) {
      s.addToEntry(i, i, variance[i]);
    }
    RealVector shared = g.operate(new ArrayRealVector(asked));
    RealVector weights = new LUDecomposition(s).getSolver().solve(shared);
    RealVector a = new ArrayRealVector(asked);
    LinearModel.Foretold foretold = new LinearModel(slopes, variance).foretell(asked);

    assertThat(foretold.moves(residual))
        .isCloseTo(weights.dotProduct(new ArrayRealVector(residual)), within(1e-9));
    assertThat(foretold.variance())
        .isCloseTo(a.dotProduct(a) - shared.dotProduct(weights), within(1e-9));
  }

  private double[] normals(int count) {
    return random.doubles(count).map(u -> random.nextGaussian()).toArray();
  }

  private double[][] matrix(int rows, int columns) {
    double[][] matrix = new double[rows][];
    for (int i = 0; i < rows; i++) {
      matrix[i] = vector(columns);
    }
    return matrix;
  }

  private double[] vector(int size) {
    return random.doubles(size, -2, 2).toArray();
  }

  private double[] positive(int size) {
    return random.doubles(size, 0.2, 3).toArray();
  }
}
