package dev.offtake.sparse;

/** LU factors of matrices of one pattern. */
public final class SparseLu {
  /** Prepares for a pattern. */
  public SparseLu(SparsePattern pattern) {}

  /** Chooses a pivot sequence for the values and factors; false when singular. */
  public boolean order(double[] values) {
    throw new UnsupportedOperationException();
  }

  /** Factors with the last sequence; false when it does not suit the values any more. */
  public boolean refactor(double[] values) {
    throw new UnsupportedOperationException();
  }

  /** Solves A x = rhs with the last factors. */
  public void solve(double[] rhs, double[] x) {
    throw new UnsupportedOperationException();
  }
}
