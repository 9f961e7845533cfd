package dev.offtake.stability;

/**
 * Makes rows and columns of a matrix alike in size by powers of two, which changes neither its
 * eigenvalues nor participation factors (Parlett and Reinsch, Numerische Mathematik 13 (1969) 293).
 * Without it the QR algorithm does not always end: rates span eight decades.
 */
final class Balanced {
  /** A change that gains less than this is not made. */
  private static final double GAIN = 0.95;

  private static final int SWEEPS = 100;

  private Balanced() {}

  /** A balanced copy. */
  static double[][] of(double[][] matrix) {
    double[][] copy = new double[matrix.length][];
    for (int i = 0; i < copy.length; i++) {
      copy[i] = matrix[i].clone();
    }
    boolean moved = true;
    for (int sweep = 0; moved && sweep < SWEEPS; sweep++) {
      moved = false;
      for (int i = 0; i < copy.length; i++) {
        moved |= balance(copy, i);
      }
    }
    return copy;
  }

  private static boolean balance(double[][] a, int i) {
    double column = 0;
    double row = 0;
    for (int j = 0; j < a.length; j++) {
      column += j == i ? 0 : Math.abs(a[j][i]);
      row += j == i ? 0 : Math.abs(a[i][j]);
    }
    if (column == 0 || row == 0) {
      return false;
    }
    double factor = Math.scalb(1.0, (int) Math.rint(Math.getExponent(row / column) / 2.0));
    if (column * factor + row / factor >= GAIN * (column + row)) {
      return false;
    }
    for (int j = 0; j < a.length; j++) {
      a[i][j] /= factor;
    }
    for (int j = 0; j < a.length; j++) {
      a[j][i] *= factor;
    }
    return true;
  }
}
