package dev.offtake.sparse;

/** Where a square matrix can differ from zero. */
public final class SparsePattern {
  private SparsePattern() {}

  /** Makes a pattern; doubled places are kept once. */
  public static SparsePattern of(int n, int[] rows, int[] columns) {
    throw new UnsupportedOperationException();
  }

  /** Number of rows. */
  public int order() {
    throw new UnsupportedOperationException();
  }

  /** Number of places. */
  public int size() {
    throw new UnsupportedOperationException();
  }

  /** Position of a place among the values, or −1. */
  public int slot(int row, int column) {
    throw new UnsupportedOperationException();
  }
}
