package dev.offtake.measure.cases;

import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Comes to rest: implicit Euler steps of dy/dt = F(y) with a dense Jacobian by differences, each
 * step longer than the one before until it is Newton's.
 */
final class Relaxation {
  private static final double FIRST_STEP = 0.3;
  private static final double SHORTEST_STEP = 1e-4;
  private static final double LONGEST_STEP = 1e9;
  private static final double[] GROWTHS = {5, 2, 12};
  private static final int MOST_STEPS = 100;

  /** Largest change of an unknown in a step: a third of a pressure. */
  private static final double LARGEST_CHANGE = 0.4;

  /** Imbalance at rest, in units of 0.1 kg/s. */
  private static final double REST = 1e-7;

  /** Growth of the imbalance that is still taken, and shrinking that makes the next step longer. */
  private static final double WORSE = 1.5;

  private static final double HELPED = 0.9;

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
    for (double growth : GROWTHS) {
      Optional<double[]> rest = settle(rates, start, growth);
      if (rest.isPresent()) {
        return rest;
      }
    }
    return Optional.empty();
  }

  private static Optional<double[]> settle(
      UnaryOperator<double[]> rates, double[] start, double growth) {
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
        step /= 2 * growth;
        continue;
      }
      Trial best = best(rates, y, f, change);
      if (!(best.size < WORSE * size(f))) {
        step = Math.max(SHORTEST_STEP, step / growth);
        continue;
      }
      // A change that had to be shortened came from a step that was too long.
      step =
          best.share == 1
              ? Math.min(LONGEST_STEP, step * growth)
              : Math.max(SHORTEST_STEP, step * best.share);
      y = best.y;
      f = best.f;
    }
    return Optional.empty();
  }

  /** A place that was tried. */
  private record Trial(double[] y, double[] f, double size, double share) {}

  /**
   * The place at the end of a change; where that turns the imbalance round, the best of a few on
   * the way: where a square root turns its sign, whole steps go to and fro for ever and halves do
   * not. A growing imbalance that keeps its direction is the course of time and is followed.
   */
  private static Trial best(
      UnaryOperator<double[]> rates, double[] y, double[] f, double[] change) {
    Trial best = along(rates, y, change, 1);
    double before = size(f);
    if (best.size < WORSE * before && dot(f, best.f) > 0) {
      return best;
    }
    for (double share = 0.5; !(best.size < HELPED * before) && share > 0.05; share *= 0.5) {
      Trial next = along(rates, y, change, share);
      best = next.size < best.size || Double.isNaN(best.size) ? next : best;
    }
    return best;
  }

  private static double dot(double[] one, double[] other) {
    double sum = 0;
    for (int i = 0; i < one.length; i++) {
      sum += one[i] * other[i];
    }
    return sum;
  }

  private static Trial along(
      UnaryOperator<double[]> rates, double[] y, double[] change, double share) {
    double[] next = y.clone();
    for (int k = 0; k < next.length; k++) {
      next[k] += share * change[k];
    }
    double[] f = rates.apply(next);
    return new Trial(next, f, size(f), share);
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
