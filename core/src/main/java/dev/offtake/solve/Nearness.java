package dev.offtake.solve;

import dev.offtake.sparse.SparseLu;

/**
 * Whether a step led nearer to the solution, by the step that the old Jacobian would make from
 * where it led. A valve at its stop or a regulator with a steep gain leaves a large residual a
 * small way from the solution, by which a good step looks bad.
 *
 * <p>The natural monotonicity test: P. Deuflhard, Newton Methods for Nonlinear Problems, Springer
 * 2004, section 3.3 (from memory). It is asked for more than there, as it stands beside a test of
 * the residual.
 */
final class Nearness {
  /** Share by which a whole step must have shortened the one that would follow. */
  private static final double SHORTENS = 0.7;

  private final double[] largest;
  private final double[] rhs;
  private final double[] next;

  /**
   * Prepares.
   *
   * @param largest step of each column by which its steps are measured; infinite where none counts
   */
  Nearness(double[] largest) {
    this.largest = largest;
    rhs = new double[largest.length];
    next = new double[largest.length];
  }

  /**
   * Whether the step that would follow is shorter.
   *
   * @param factors of the Jacobian that the step was made with
   * @param residual where the step led
   * @param step whole
   * @param length share of it that was made
   */
  boolean gained(SparseLu factors, double[] residual, double[] step, double length) {
    for (int r = 0; r < rhs.length; r++) {
      rhs[r] = -residual[r];
    }
    factors.solveUnrefined(rhs, next);
    return size(next) <= (1 - SHORTENS * length) * size(step); // never where it is not a number
  }

  private double size(double[] of) {
    double sum = 0;
    for (int c = 0; c < of.length; c++) {
      double share = of[c] / largest[c];
      sum += share * share;
    }
    return Math.sqrt(sum);
  }
}
