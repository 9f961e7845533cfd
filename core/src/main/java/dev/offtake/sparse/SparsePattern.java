package dev.offtake.sparse;

import java.util.Arrays;

/**
 * Where a square matrix can differ from zero.
 *
 * <p>Its places are numbered row by row, and from left to right in a row; the number of a place,
 * its <i>slot</i>, is the position of its value in the arrays that {@link SparseLu} takes.
 */
public final class SparsePattern {
  private final int[] start;
  private final int[] columns;

  private SparsePattern(int[] start, int[] columns) {
    this.start = start;
    this.columns = columns;
  }

  /**
   * Makes a pattern; doubled places are kept once.
   *
   * @param n number of rows and of columns, ≥ 0
   * @param rows row of each place, from 0 to n − 1
   * @param columns column of each place, from 0 to n − 1
   * @throws IllegalArgumentException when a place lies outside the matrix or a column is missing
   */
  public static SparsePattern of(int n, int[] rows, int[] columns) {
    if (n < 0 || rows.length != columns.length) {
      throw new IllegalArgumentException(
          "A pattern of order %d needs as many rows (%d) as columns (%d)."
              .formatted(n, rows.length, columns.length));
    }
    long[] places = new long[rows.length];
    for (int i = 0; i < places.length; i++) {
      if (rows[i] < 0 || rows[i] >= n || columns[i] < 0 || columns[i] >= n) {
        throw new IllegalArgumentException(
            "Place (%d, %d) lies outside a matrix of order %d.".formatted(rows[i], columns[i], n));
      }
      places[i] = (long) rows[i] * n + columns[i];
    }
    return ofSorted(n, Arrays.stream(places).sorted().distinct().toArray());
  }

  private static SparsePattern ofSorted(int n, long[] places) {
    int[] start = new int[n + 1];
    int[] columns = new int[places.length];
    for (int s = 0; s < places.length; s++) {
      columns[s] = (int) (places[s] % n);
      start[(int) (places[s] / n) + 1]++;
    }
    for (int r = 0; r < n; r++) {
      start[r + 1] += start[r];
    }
    return new SparsePattern(start, columns);
  }

  /** Number of rows. */
  public int order() {
    return start.length - 1;
  }

  /** Number of places. */
  public int size() {
    return columns.length;
  }

  /**
   * Position of a place among the values.
   *
   * @return the slot, or −1 when the pattern has no such place
   */
  public int slot(int row, int column) {
    if (row < 0 || row >= order()) {
      return -1;
    }
    int slot = Arrays.binarySearch(columns, start[row], start[row + 1], column);
    return slot < 0 ? -1 : slot;
  }

  /** First slot of a row; that of the row behind the last is {@link #size()}. */
  public int start(int row) {
    return start[row];
  }

  /** Column of a slot. */
  public int column(int slot) {
    return columns[slot];
  }
}
