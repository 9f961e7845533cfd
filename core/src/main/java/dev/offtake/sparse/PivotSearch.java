package dev.offtake.sparse;

/**
 * Chooses pivots by the count of Markowitz, (entries of the row − 1)·(entries of the column − 1),
 * among values that are large enough in their column.
 *
 * <p>Only the {@value #COLUMNS} shortest columns that offer a pivot are looked at, as is common
 * practice; a longer search hardly lessens the fill.
 */
final class PivotSearch {
  /** Share of the largest value of the column that a pivot must reach. */
  private static final double THRESHOLD = 0.5;

  private static final int COLUMNS = 4;

  private final int n;
  private final ActiveMatrix matrix;
  private final ColumnQueue queue;
  private final boolean[] taken;
  private int row;
  private int column;
  private long cost;
  private double size;

  private PivotSearch(SparsePattern pattern, double[] scaled) {
    n = pattern.order();
    matrix = new ActiveMatrix(pattern, scaled);
    queue = new ColumnQueue(n);
    taken = new boolean[n];
    for (int c = 0; c < n; c++) {
      queue.add(c, matrix.columnLength(c));
    }
  }

  /**
   * Finds a sequence.
   *
   * @param scaled values whose rows and columns are of one size
   */
  static PivotSequence run(SparsePattern pattern, double[] scaled) {
    return new PivotSearch(pattern, scaled).sequence();
  }

  private PivotSequence sequence() {
    int[] rows = new int[n];
    int[] columns = new int[n];
    int[][] lower = new int[n][0];
    int[][] upper = new int[n][0];
    for (int k = 0; k < n; k++) {
      if (!find()) {
        return new PivotSequence(rows, columns, lower, upper, firstLeft());
      }
      rows[k] = row;
      columns[k] = column;
      take();
      lower[k] = matrix.rowsOf(column);
      upper[k] = matrix.columnsOf(row);
      for (int c : upper[k]) {
        queue.add(c, matrix.columnLength(c));
      }
    }
    return new PivotSequence(rows, columns, lower, upper, -1);
  }

  /** Takes the pivot out; its row's columns, which change, leave the queue. */
  private void take() {
    taken[row] = true;
    for (int c : matrix.columnsOf(row)) {
      queue.remove(c);
    }
    matrix.eliminate(row, column);
  }

  /** Rows that are left when no pivot is found are zero but for rounding. */
  private int firstLeft() {
    int r = 0;
    while (taken[r]) {
      r++;
    }
    return r;
  }

  private boolean find() {
    cost = Long.MAX_VALUE;
    int offers = 0;
    for (int entries = 1; entries <= n && offers < COLUMNS; entries++) {
      // Longer columns cannot beat a pivot whose row and column are both shorter than they are.
      if (cost <= (long) (entries - 1) * (entries - 1)) {
        return true;
      }
      for (int c = queue.first(entries); c >= 0 && offers < COLUMNS; c = queue.after(c)) {
        if (offer(c, entries)) {
          offers++;
        }
      }
    }
    return cost < Long.MAX_VALUE;
  }

  private boolean offer(int candidate, int entries) {
    double largest = 0;
    for (int e = 0; e < entries; e++) {
      largest = Math.max(largest, matrix.magnitude(matrix.rowOf(candidate, e), candidate));
    }
    if (largest == 0) {
      return false;
    }
    for (int e = 0; e < entries; e++) {
      int r = matrix.rowOf(candidate, e);
      double magnitude = matrix.magnitude(r, candidate);
      if (magnitude >= THRESHOLD * largest) {
        consider(r, candidate, (long) (entries - 1) * (matrix.rowLength(r) - 1), magnitude);
      }
    }
    return true;
  }

  private void consider(int candidateRow, int candidateColumn, long count, double magnitude) {
    if (count < cost || (count == cost && magnitude > size)) {
      row = candidateRow;
      column = candidateColumn;
      cost = count;
      size = magnitude;
    }
  }
}
