package dev.offtake.measure.cases;

import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Comes to rest: implicit Euler steps of dy/dt = F(y) with a dense Jacobian by differences, each
 * step longer than the one before until it is Newton's.
 */
final class Relaxation {
  private static final double FIRST_STEP = 0.3;
  private static final double LONGEST_STEP = 1e9;
  private static final double GROWTH = 5;
  private static final int MOST_STEPS = 120;

  /** Largest change of an unknown in a step: a third of a pressure. */
  private static final double LARGEST_CHANGE = 0.4;

  /** Imbalance at rest, in units of 0.1 kg/s. */
  private static final double REST = 1e-7;

  private static final double DIFFERENCE = 1e-7;

  private Relaxation() {}

  /**
   * The state of rest that is reached.
   *
   * @param rates F
   * @param start y at first
   * @return empty when none is reached
   */
  static Optional<double[]> settle(UnaryOperator<double[]> rates, double[] start) {
    double[] y = start.clone();
    double[] f = rates.apply(y);
    double step = FIRST_STEP;
    for (int i = 0; i < MOST_STEPS; i++) {
      if (size(f) < REST) {
        return Optional.of(y);
      }
      double[][] matrix = matrix(rates, y, f, step);
      double[] change = Dense.solve(matrix, f.clone());
      double most = size(change);
      if (!(most < LARGEST_CHANGE)) {
        step /= 2 * GROWTH;
        continue;
      }
      double[] next = y.clone();
      for (int k = 0; k < next.length; k++) {
        next[k] += change[k];
      }
      double[] after = rates.apply(next);
      if (!(size(after) < 3 * size(f) + REST)) {
        step /= GROWTH;
        continue;
      }
      // Longer only where the last one helped, so that a cycle across a corner dies out.
      step = size(after) < 0.9 * size(f) ? Math.min(LONGEST_STEP, step * GROWTH) : step / 2;
      y = next;
      f = after;
    }
    return Optional.empty();
  }

  /** I/Δt − ∂F/∂y. */
  private static double[][] matrix(
      UnaryOperator<double[]> rates, double[] y, double[] f, double step) {
    int n = y.length;
    double[][] matrix = new double[n][n];
    for (int k = 0; k < n; k++) {
      double[] moved = y.clone();
      moved[k] += DIFFERENCE;
      double[] other = rates.apply(moved);
      for (int i = 0; i < n; i++) {
        matrix[i][k] = -(other[i] - f[i]) / DIFFERENCE;
      }
      matrix[k][k] += 1 / step;
    }
    return matrix;
  }

  private static double size(double[] values) {
    double most = 0;
    for (double value : values) {
      most = Math.abs(value) <= most ? most : Math.abs(value);
    }
    return most;
  }
}
