package dev.offtake.flow;

import java.util.function.DoubleUnaryOperator;

/** Differences extrapolated to step zero: C. J. F. Ridders, Adv. Eng. Software 4 (1982). */
final class Ridders {
  private Ridders() {}

  /** f′(x) from the central differences of steps h, h/1.4, h/1.96, … */
  static double slope(DoubleUnaryOperator f, double x, double h) {
    int n = 8;
    double[][] a = new double[n][n];
    double best = Double.NaN;
    double error = Double.MAX_VALUE;
    double step = h;
    for (int i = 0; i < n; i++) {
      a[0][i] = (f.applyAsDouble(x + step) - f.applyAsDouble(x - step)) / (2 * step);
      double factor = 1.96;
      for (int j = 1; j <= i; j++) {
        a[j][i] = (a[j - 1][i] * factor - a[j - 1][i - 1]) / (factor - 1);
        factor *= 1.96;
        double e = Math.max(Math.abs(a[j][i] - a[j - 1][i]), Math.abs(a[j][i] - a[j - 1][i - 1]));
        if (e <= error) {
          error = e;
          best = a[j][i];
        }
      }
      step /= 1.4;
    }
    return best;
  }
}
