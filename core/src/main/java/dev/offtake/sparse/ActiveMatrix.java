package dev.offtake.sparse;

import java.util.Arrays;

/**
 * What is left of a matrix while pivots are taken out of it: rows with values, and columns as lists
 * of rows.
 *
 * <p>Beside each value stands its <i>mass</i>, the largest magnitude that went into it. A value
 * that is no more than rounding of its mass is what exact arithmetic would have made zero. Zeros
 * stay in the lists: a later matrix of the same pattern can have a value there.
 */
final class ActiveMatrix {
  /** Share of its mass below which a value is rounding. */
  private static final double ROUNDING = 0x1p-46;

  private final int[][] columnsOfRow;
  private final double[][] values;
  private final double[][] masses;
  private final int[] rowLength;
  private final int[][] rowsOfColumn;
  private final int[] columnLength;
  private final int[] position;

  ActiveMatrix(SparsePattern pattern, double[] scaled) {
    int n = pattern.order();
    columnsOfRow = new int[n][];
    values = new double[n][];
    masses = new double[n][];
    rowLength = new int[n];
    rowsOfColumn = new int[n][4];
    columnLength = new int[n];
    position = new int[n];
    Arrays.fill(position, -1);
    for (int row = 0; row < n; row++) {
      load(pattern, scaled, row);
    }
  }

  private void load(SparsePattern pattern, double[] scaled, int row) {
    int from = pattern.start(row);
    int length = pattern.start(row + 1) - from;
    columnsOfRow[row] = new int[length + 4];
    values[row] = new double[length + 4];
    masses[row] = new double[length + 4];
    for (int s = from; s < from + length; s++) {
      append(row, pattern.column(s));
      values[row][s - from] = scaled[s];
      masses[row][s - from] = Math.abs(scaled[s]);
    }
  }

  int rowLength(int row) {
    return rowLength[row];
  }

  int columnLength(int column) {
    return columnLength[column];
  }

  /** Row of an entry of a column. */
  int rowOf(int column, int entry) {
    return rowsOfColumn[column][entry];
  }

  /** Columns of a row, in no order. */
  int[] columnsOf(int row) {
    return Arrays.copyOf(columnsOfRow[row], rowLength[row]);
  }

  /** Rows of a column, in no order. */
  int[] rowsOf(int column) {
    return Arrays.copyOf(rowsOfColumn[column], columnLength[column]);
  }

  /** Magnitude of an entry of the matrix; zero when it is only rounding. */
  double magnitude(int row, int column) {
    int at = find(row, column);
    double size = Math.abs(values[row][at]);
    return size > ROUNDING * masses[row][at] ? size : 0;
  }

  /** Takes a pivot's row and column out; afterwards they hold the other entries of U and L. */
  void eliminate(int row, int column) {
    int at = find(row, column);
    double pivot = values[row][at];
    removeFromRow(row, at);
    removeFromColumn(column, row);
    for (int e = 0; e < rowLength[row]; e++) {
      removeFromColumn(columnsOfRow[row][e], row);
    }
    for (int e = 0; e < columnLength[column]; e++) {
      subtract(row, column, pivot, rowsOfColumn[column][e]);
    }
  }

  private void subtract(int pivotRow, int pivotColumn, double pivot, int row) {
    int at = find(row, pivotColumn);
    double left = values[row][at] / pivot;
    double leftMass = masses[row][at] / Math.abs(pivot);
    removeFromRow(row, at);
    for (int e = 0; e < rowLength[row]; e++) {
      position[columnsOfRow[row][e]] = e;
    }
    for (int e = 0; e < rowLength[pivotRow]; e++) {
      int column = columnsOfRow[pivotRow][e];
      int to = position[column] < 0 ? append(row, column) : position[column];
      double up = values[pivotRow][e];
      values[row][to] -= left * up;
      double mass = Math.max(Math.abs(left) * masses[pivotRow][e], leftMass * Math.abs(up));
      masses[row][to] = Math.max(masses[row][to], mass);
    }
    for (int e = 0; e < rowLength[row]; e++) {
      position[columnsOfRow[row][e]] = -1;
    }
  }

  private int find(int row, int column) {
    int[] columns = columnsOfRow[row];
    int at = 0;
    while (columns[at] != column) {
      at++;
    }
    return at;
  }

  private int append(int row, int column) {
    int at = rowLength[row]++;
    if (at == columnsOfRow[row].length) {
      columnsOfRow[row] = Arrays.copyOf(columnsOfRow[row], 2 * at);
      values[row] = Arrays.copyOf(values[row], 2 * at);
      masses[row] = Arrays.copyOf(masses[row], 2 * at);
    }
    columnsOfRow[row][at] = column;
    values[row][at] = 0;
    masses[row][at] = 0;
    int entry = columnLength[column]++;
    if (entry == rowsOfColumn[column].length) {
      rowsOfColumn[column] = Arrays.copyOf(rowsOfColumn[column], 2 * entry);
    }
    rowsOfColumn[column][entry] = row;
    return at;
  }

  private void removeFromRow(int row, int at) {
    int last = --rowLength[row];
    columnsOfRow[row][at] = columnsOfRow[row][last];
    values[row][at] = values[row][last];
    masses[row][at] = masses[row][last];
  }

  private void removeFromColumn(int column, int row) {
    int[] rows = rowsOfColumn[column];
    int at = 0;
    while (rows[at] != row) {
      at++;
    }
    rows[at] = rows[--columnLength[column]];
  }
}
