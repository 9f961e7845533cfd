package dev.offtake.measure.cases;

/** Small dense linear systems. */
final class Dense {
  private Dense() {}

  /**
   * Solves by Gauss with row exchange; both arguments are spent.
   *
   * @return the solution; not finite where the matrix is singular
   */
  static double[] solve(double[][] a, double[] b) {
    int n = b.length;
    for (int k = 0; k < n; k++) {
      exchange(a, b, k);
      for (int i = k + 1; i < n; i++) {
        double factor = a[i][k] / a[k][k];
        if (factor != 0) {
          for (int j = k + 1; j < n; j++) {
            a[i][j] -= factor * a[k][j];
          }
          b[i] -= factor * b[k];
        }
      }
    }
    for (int i = n - 1; i >= 0; i--) {
      for (int j = i + 1; j < n; j++) {
        b[i] -= a[i][j] * b[j];
      }
      b[i] /= a[i][i];
    }
    return b;
  }

  private static void exchange(double[][] a, double[] b, int k) {
    int best = k;
    for (int i = k + 1; i < b.length; i++) {
      if (Math.abs(a[i][k]) > Math.abs(a[best][k])) {
        best = i;
      }
    }
    double[] row = a[k];
    a[k] = a[best];
    a[best] = row;
    double right = b[k];
    b[k] = b[best];
    b[best] = right;
  }

  /**
   * The lower triangle whose square is a matrix (Cholesky).
   *
   * @param a symmetric and positive definite; kept
   */
  static double[][] root(double[][] a) {
    double[][] root = new double[a.length][a.length];
    for (int i = 0; i < a.length; i++) {
      for (int j = 0; j <= i; j++) {
        double left = a[i][j];
        for (int k = 0; k < j; k++) {
          left -= root[i][k] * root[j][k];
        }
        root[i][j] = i == j ? Math.sqrt(left) : left / root[j][j];
      }
    }
    return root;
  }

  /** Solves with a lower triangle. */
  static double[] under(double[][] root, double[] b) {
    double[] x = new double[b.length];
    for (int i = 0; i < x.length; i++) {
      double left = b[i];
      for (int k = 0; k < i; k++) {
        left -= root[i][k] * x[k];
      }
      x[i] = left / root[i][i];
    }
    return x;
  }
}
