package dev.offtake.cause.chance;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.decomposition.chol.CholeskyDecompositionInner_DDRM;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;

/**
 * Readings that were foretold with what nobody knows exactly: y − g = r = G·θ + ε with θ ~ N(0, I)
 * and ε ~ N(0, D), D diagonal.
 *
 * <p>Its evidence is N(r; 0, S), S = G·Gᵀ + D, and what the readings tell of θ is normal again with
 * mean Gᵀ·S⁻¹·r: linear regression with known errors (for instance Bishop, Pattern Recognition and
 * Machine Learning, 2006, §3.3 and §3.5). For a forecast that is linear in θ both are exact; for
 * any other this is Laplace's approximation about θ = 0.
 */
public final class LinearModel {
  private static final double LOG_TWO_PI = Math.log(2 * Math.PI);

  private final double[][] slopes;
  private final double[] variance;
  private final double[][] inverse;
  private final double logDeterminant;

  /**
   * Prepares.
   *
   * @param slopes G, a row for each reading; each unknown counted in its own standard deviations
   * @param variance D, of each reading's own error; above zero
   */
  public LinearModel(double[][] slopes, double[] variance) {
    this.slopes = slopes;
    this.variance = variance;
    int m = variance.length;
    DMatrixRMaj s = new DMatrixRMaj(m, m);
    for (int i = 0; i < m; i++) {
      for (int j = 0; j < m; j++) {
        s.set(i, j, dot(slopes[i], slopes[j]) + (i == j ? variance[i] : 0));
      }
    }
    inverse = new double[m][m];
    logDeterminant = m == 0 ? 0 : invert(s);
  }

  private double invert(DMatrixRMaj s) {
    int m = s.getNumRows();
    CholeskyDecompositionInner_DDRM cholesky = new CholeskyDecompositionInner_DDRM(true);
    LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.chol(m);
    if (!cholesky.decompose(s.copy()) || !solver.setA(s.copy())) {
      throw new IllegalArgumentException("errors must be above zero");
    }
    DMatrixRMaj out = new DMatrixRMaj(m, m);
    solver.invert(out);
    DMatrixRMaj lower = cholesky.getT(null);
    double log = 0;
    for (int i = 0; i < m; i++) {
      log += 2 * Math.log(lower.get(i, i));
      for (int j = 0; j < m; j++) {
        inverse[i][j] = out.get(i, j);
      }
    }
    return log;
  }

  /** How many readings there are. */
  public int readings() {
    return variance.length;
  }

  /** Evidence of residuals y − g, a natural logarithm. */
  public double logEvidence(double[] residual) {
    return -0.5 * (misfit(residual) + logDeterminant + residual.length * LOG_TWO_PI);
  }

  /** Squared distance rᵀ·S⁻¹·r: chi-squared with as many degrees as readings. */
  public double misfit(double[] residual) {
    return dot(residual, weighed(residual));
  }

  /** S⁻¹·r. */
  private double[] weighed(double[] residual) {
    double[] out = new double[residual.length];
    for (int i = 0; i < out.length; i++) {
      out[i] = dot(inverse[i], residual);
    }
    return out;
  }

  /**
   * How a reading lies to what all the others make of it.
   *
   * @param residual of all readings
   * @param reading its number
   */
  public Normal against(double[] residual, int reading) {
    double own = 1 / inverse[reading][reading];
    return new Normal(dot(inverse[reading], residual) * own, own);
  }

  /**
   * A normal deviation.
   *
   * @param deviation of the value from its mean
   * @param variance above zero
   */
  public record Normal(double deviation, double variance) {
    /** Natural logarithm of the density. */
    public double logDensity() {
      return -0.5 * (deviation * deviation / variance + Math.log(variance) + LOG_TWO_PI);
    }

    /** The same deviation with more variance. */
    public Normal wider(double more) {
      return new Normal(deviation, variance + more);
    }

    /** Deviation in standard deviations. */
    public double score() {
      return deviation / Math.sqrt(variance);
    }
  }

  /** What the readings make of θ: its mean. */
  public double[] mean(double[] residual) {
    double[] weighed = weighed(residual);
    double[] mean = new double[unknowns()];
    for (int i = 0; i < weighed.length; i++) {
      for (int k = 0; k < mean.length; k++) {
        mean[k] += slopes[i][k] * weighed[i];
      }
    }
    return mean;
  }

  private int unknowns() {
    return slopes.length == 0 ? 0 : slopes[0].length;
  }

  /**
   * Prepares to tell what the readings make of something that depends on the same unknowns.
   *
   * @param slope of it by each unknown
   */
  public Foretold foretell(double[] slope) {
    double[] shared = new double[slopes.length];
    for (int i = 0; i < shared.length; i++) {
      shared[i] = dot(slopes[i], slope);
    }
    double[] weights = weighed(shared);
    return new Foretold(weights, Math.max(0, dot(slope, slope) - dot(shared, weights)));
  }

  /**
   * What readings make of something else.
   *
   * @param weights of the readings' residuals in its mean
   * @param variance that is left
   */
  public record Foretold(double[] weights, double variance) {
    /** How far its mean moves from what was foretold without readings. */
    public double moves(double[] residual) {
      return dot(weights, residual);
    }
  }

  /**
   * Draws θ from what the readings make of it, by Matheron's rule: a draw without readings is
   * corrected by what the readings say of it (Journel and Huijbregts, Mining Geostatistics, 1978).
   *
   * @param residual of the readings
   * @param prior standard normal draws, one for each unknown
   * @param noise standard normal draws, one for each reading
   */
  public double[] draw(double[] residual, double[] prior, double[] noise) {
    double[] off = new double[residual.length];
    for (int i = 0; i < off.length; i++) {
      off[i] = residual[i] - dot(slopes[i], prior) - noise[i] * Math.sqrt(variance[i]);
    }
    double[] theta = mean(off);
    for (int k = 0; k < theta.length; k++) {
      theta[k] += prior[k];
    }
    return theta;
  }

  /** What θ adds to reading {@code i}, to first order. */
  public double shift(int i, double[] theta) {
    return dot(slopes[i], theta);
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }
}
