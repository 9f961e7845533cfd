package dev.offtake.network;

import java.util.Arrays;

/**
 * One column of a Jacobian by Ridders' method: centred differences with ever smaller steps,
 * extrapolated to none; each entry keeps the extrapolation that changed least and says by how much.
 *
 * <p>Near the joints of piecewise laws one such extrapolation may settle by chance. So there are
 * two with steps of their own, whose disagreement counts as error, and so does a jump between the
 * slopes of the two sides.
 */
final class Extrapolated {
  private static final int LEVELS = 13;
  private static final double SHRINK = 2;

  final double[] slope;
  final double[] error;
  private final double[] jump;

  private Extrapolated(int rows) {
    slope = new double[rows];
    error = new double[rows];
    jump = new double[rows];
    Arrays.fill(error, Double.POSITIVE_INFINITY);
    Arrays.fill(jump, Double.POSITIVE_INFINITY);
  }

  /**
   * Differences the residual.
   *
   * @param equations at the state in question; left there, evaluated
   * @param variable by which
   * @param size of the variable
   */
  static Extrapolated column(Equations equations, int variable, double size) {
    Extrapolated one = series(equations, variable, 1e-3 * size);
    Extrapolated two = series(equations, variable, 0.73e-3 * size);
    for (int r = 0; r < one.error.length; r++) {
      double apart = Math.abs(one.slope[r] - two.slope[r]);
      double worse = Math.max(one.error[r], two.error[r]);
      one.error[r] = Math.max(Math.max(apart, worse), Math.min(one.jump[r], two.jump[r]));
    }
    return one;
  }

  private static Extrapolated series(Equations equations, int variable, double first) {
    int n = equations.size();
    double[][][] table = new double[LEVELS][LEVELS][n];
    double[][] side = new double[LEVELS][n];
    Extrapolated found = new Extrapolated(n);
    double step = first;
    for (int i = 0; i < LEVELS; i++, step /= SHRINK) {
      difference(equations, variable, step, table[0][i], side[i]);
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
      for (int r = 0; r < n && i > 0; r++) {
        found.jump[r] = Math.min(found.jump[r], Math.abs(2 * side[i][r] - side[i - 1][r]));
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

  /** Centred slopes, and how far those of the two sides are apart. */
  private static void difference(
      Equations equations, int variable, double step, double[] centred, double[] apart) {
    double[] x = equations.evaluation().variables;
    double kept = x[variable];
    double[] here = new double[centred.length];
    double[] down = new double[centred.length];
    equations.evaluate();
    equations.residual(here);
    x[variable] = kept + step;
    double above = x[variable] - kept;
    equations.evaluate();
    equations.residual(centred);
    x[variable] = kept - step;
    double below = kept - x[variable];
    equations.evaluate();
    equations.residual(down);
    x[variable] = kept;
    for (int r = 0; r < centred.length; r++) {
      apart[r] = (centred[r] - here[r]) / above - (here[r] - down[r]) / below;
      centred[r] = (centred[r] - down[r]) / (above + below);
    }
  }
}
