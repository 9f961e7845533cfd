package dev.offtake.sparse;

/**
 * The elimination that looks back at the finished rows; for matrices whose list of operations would
 * be too long.
 */
final class LookingElimination implements Elimination {
  private final FactorLayout layout;
  private final double[] work;

  LookingElimination(FactorLayout layout) {
    this.layout = layout;
    work = new double[layout.n];
  }

  @Override
  public void row(int m, double[] factors) {
    int[] step = layout.step;
    int end = layout.start[m + 1];
    for (int e = layout.start[m]; e < end; e++) {
      work[step[e]] = factors[e];
    }
    for (int e = layout.start[m]; e < layout.diagonal[m]; e++) {
      int k = step[e];
      double left = work[k];
      for (int u = layout.diagonal[k] + 1; u < layout.start[k + 1]; u++) {
        work[step[u]] -= left * factors[u];
      }
    }
    for (int e = layout.start[m]; e < end; e++) {
      factors[e] = work[step[e]];
    }
  }
}
