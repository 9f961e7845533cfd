package dev.offtake.sparse;

import java.util.Arrays;

/**
 * Where the entries of both factors stand in one array: row by row in pivot order, each row with
 * its part of L, its diagonal and its part of U, from left to right.
 */
final class FactorLayout {
  final int n;

  /** Row of the matrix at each step. */
  final int[] row;

  /** Column of the matrix at each step. */
  final int[] column;

  /** First entry of each step's row, and one behind the last. */
  final int[] start;

  /** Diagonal entry of each step's row. */
  final int[] diagonal;

  /** Step of each entry's column. */
  final int[] step;

  /** Entry that each slot of the pattern goes to. */
  final int[] entryOfSlot;

  FactorLayout(SparsePattern pattern, PivotSequence pivots) {
    n = pattern.order();
    row = pivots.rows();
    column = pivots.columns();
    start = new int[n + 1];
    diagonal = new int[n];
    int[] stepOfRow = inverse(row);
    int[] stepOfColumn = inverse(column);
    measure(pivots, stepOfRow);
    step = new int[start[n]];
    fill(pivots, stepOfRow, stepOfColumn);
    entryOfSlot = new int[pattern.size()];
    place(pattern, stepOfColumn);
  }

  private static int[] inverse(int[] permutation) {
    int[] inverse = new int[permutation.length];
    for (int k = 0; k < permutation.length; k++) {
      inverse[permutation[k]] = k;
    }
    return inverse;
  }

  private void measure(PivotSequence pivots, int[] stepOfRow) {
    int[] below = new int[n];
    for (int[] rows : pivots.lower()) {
      for (int r : rows) {
        below[stepOfRow[r]]++;
      }
    }
    for (int m = 0; m < n; m++) {
      diagonal[m] = start[m] + below[m];
      start[m + 1] = diagonal[m] + 1 + pivots.upper()[m].length;
    }
  }

  private void fill(PivotSequence pivots, int[] stepOfRow, int[] stepOfColumn) {
    int[] next = Arrays.copyOf(start, n);
    for (int k = 0; k < n; k++) {
      for (int r : pivots.lower()[k]) {
        step[next[stepOfRow[r]]++] = k;
      }
      step[diagonal[k]] = k;
      int at = diagonal[k];
      for (int c : pivots.upper()[k]) {
        step[++at] = stepOfColumn[c];
      }
      Arrays.sort(step, diagonal[k] + 1, start[k + 1]);
    }
  }

  private void place(SparsePattern pattern, int[] stepOfColumn) {
    for (int m = 0; m < n; m++) {
      for (int s = pattern.start(row[m]); s < pattern.start(row[m] + 1); s++) {
        int target = stepOfColumn[pattern.column(s)];
        entryOfSlot[s] = Arrays.binarySearch(step, start[m], start[m + 1], target);
      }
    }
  }
}
