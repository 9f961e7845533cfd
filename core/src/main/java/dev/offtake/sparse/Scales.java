package dev.offtake.sparse;

import java.util.Arrays;

/** Factors that bring the columns, and then the rows, of one matrix to one size. */
final class Scales {
  private final SparsePattern pattern;
  private final double[] columns;
  private final double[] rows;
  private int badRow = -1;

  /** Finds the factors; when a row is zero or not finite, only {@link #badRow()} means anything. */
  Scales(SparsePattern pattern, double[] values) {
    this.pattern = pattern;
    columns = new double[pattern.order()];
    rows = new double[pattern.order()];
    Arrays.fill(columns, 1);
    // Rows first, so that a row in watts does not drown a row in kg/s when the columns are
    // measured.
    scaleRows(values);
    scaleColumns(values);
    scaleRows(values);
  }

  private void scaleRows(double[] values) {
    for (int r = 0; r < rows.length && badRow < 0; r++) {
      rows[r] = ofRow(pattern, values, columns, r);
      if (rows[r] == 0) {
        badRow = r;
      }
    }
  }

  private void scaleColumns(double[] values) {
    double[] largest = new double[columns.length];
    for (int r = 0; r < rows.length; r++) {
      for (int s = pattern.start(r); s < pattern.start(r + 1); s++) {
        int c = pattern.column(s);
        largest[c] = Math.max(largest[c], rows[r] * Math.abs(values[s]));
      }
    }
    for (int c = 0; c < columns.length; c++) {
      // A column of zeros stays as it is; the search for pivots will blame a row.
      columns[c] = largest[c] >= Double.MIN_NORMAL ? 1 / largest[c] : 1;
    }
  }

  /** Reciprocal of the sum of magnitudes of a row; zero when that sum is none or not finite. */
  static double ofRow(SparsePattern pattern, double[] values, double[] columns, int row) {
    double sum = 0;
    for (int s = pattern.start(row); s < pattern.start(row + 1); s++) {
      sum += Math.abs(values[s] * columns[pattern.column(s)]);
    }
    // The comparisons are false for a NaN.
    return sum >= Double.MIN_NORMAL && sum <= Double.MAX_VALUE ? 1 / sum : 0;
  }

  /** A row that is zero or not finite, or −1. */
  int badRow() {
    return badRow;
  }

  /** Factor of each column. */
  double[] columns() {
    return columns;
  }

  /** The scaled values. */
  double[] apply(double[] values) {
    double[] scaled = new double[values.length];
    for (int r = 0; r < rows.length; r++) {
      for (int s = pattern.start(r); s < pattern.start(r + 1); s++) {
        scaled[s] = rows[r] * (values[s] * columns[pattern.column(s)]);
      }
    }
    return scaled;
  }
}
