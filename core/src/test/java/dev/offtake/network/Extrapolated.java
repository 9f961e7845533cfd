package dev.offtake.network;

import java.util.Arrays;

/**
 * One column of a Jacobian by Ridders' method: centred differences with ever smaller steps,
 * extrapolated to none; each entry keeps the extrapolation that changed least and says by how much.
 */
final class Extrapolated {
  private static final int LEVELS = 12;
  private static final double SHRINK = 2;
  private static final double FIRST = 1e-3;

  final double[] slope;
  final double[] error;

  private Extrapolated(int rows) {
    slope = new double[rows];
    error = new double[rows];
    Arrays.fill(error, Double.POSITIVE_INFINITY);
  }

  /**
   * Differences the residual.
   *
   * @param equations at the state in question; left there, evaluated
   * @param variable by which
   * @param size of the variable
   */
  static Extrapolated column(Equations equations, int variable, double size) {
    int n = equations.size();
    double[][][] table = new double[LEVELS][LEVELS][n];
    Extrapolated found = new Extrapolated(n);
    double step = FIRST * size;
    for (int i = 0; i < LEVELS; i++, step /= SHRINK) {
      difference(equations, variable, step, table[0][i]);
      double power = SHRINK * SHRINK;
      for (int j = 1; j <= i; j++, power *= SHRINK * SHRINK) {
        for (int r = 0; r < n; r++) {
          double fine = table[j - 1][i][r];
          double coarse = table[j - 1][i - 1][r];
          double value = (fine * power - coarse) / (power - 1);
          table[j][i][r] = value;
          found.note(r, value, Math.max(Math.abs(value - fine), Math.abs(value - coarse)));
        }
      }
    }
    equations.evaluate();
    return found;
  }

  private void note(int row, double value, double change) {
    if (change < error[row]) {
      error[row] = change;
      slope[row] = value;
    }
  }

  private static void difference(Equations equations, int variable, double step, double[] out) {
    double[] x = equations.evaluation().variables;
    double kept = x[variable];
    double[] down = new double[out.length];
    x[variable] = kept + step;
    double up = x[variable];
    equations.evaluate();
    equations.residual(out);
    x[variable] = kept - step;
    double width = up - x[variable];
    equations.evaluate();
    equations.residual(down);
    x[variable] = kept;
    for (int r = 0; r < out.length; r++) {
      out[r] = (out[r] - down[r]) / width;
    }
  }
}
