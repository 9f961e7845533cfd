package dev.offtake.sparse;

import java.util.Random;

/** Matrices like those of networks, and what tests need of them. */
final class Matrices {
  private Matrices() {}

  /** A pattern with values. */
  record Sample(SparsePattern pattern, double[] values) {
    double[][] dense() {
      double[][] a = new double[pattern.order()][pattern.order()];
      for (int r = 0; r < a.length; r++) {
        for (int s = pattern.start(r); s < pattern.start(r + 1); s++) {
          a[r][pattern.column(s)] = values[s];
        }
      }
      return a;
    }

    Sample with(double[] other) {
      return new Sample(pattern, other);
    }

    /** Largest residual over what rounding of its terms allows, in units of 2⁻⁵³. */
    double backwardError(double[] x, double[] rhs) {
      double worst = 0;
      for (int r = 0; r < x.length; r++) {
        double sum = -rhs[r];
        double size = Math.abs(rhs[r]);
        for (int s = pattern.start(r); s < pattern.start(r + 1); s++) {
          sum += values[s] * x[pattern.column(s)];
          size += Math.abs(values[s] * x[pattern.column(s)]);
        }
        worst = Math.max(worst, size == 0 ? 0 : Math.abs(sum) / size * 0x1p53);
      }
      return worst;
    }
  }

  /**
   * Mass and energy rows of a random network: a tree of {@code n/2} points with a few loops, joined
   * to the air outside at some points, in ln p and T.
   */
  static Sample network(int n, Random random) {
    int points = Math.max(1, (n + 1) / 2);
    int edges = points - 1 + points / 5;
    int[][] ends = new int[edges][];
    for (int e = 0; e < edges; e++) {
      int to = e < points - 1 ? e + 1 : random.nextInt(points);
      int from = e < points - 1 ? Math.max(0, to - 1 - random.nextInt(3)) : random.nextInt(points);
      ends[e] = new int[] {from, to};
    }
    double[][] a = new double[n][n];
    boolean[][] there = new boolean[n][n];
    for (int i = 0; i < n; i++) {
      there[i][i] = true;
      a[i][i] = -(0.01 + 0.2 * random.nextDouble()) * (i % 2 == 0 ? 1 : 300);
    }
    for (int[] end : ends) {
      couple(a, there, end[0], end[1], random);
      couple(a, there, end[1], end[0], random);
    }
    return sample(a, there);
  }

  /** The row pair of a point gets the partials of one stream. */
  private static void couple(double[][] a, boolean[][] there, int here, int other, Random random) {
    double conductance = Math.exp(2 * random.nextGaussian());
    double[] byRow = {conductance, conductance * 5e4};
    double[] byColumn = {1, 1.0 / 400};
    for (int i = 0; i < 2 && 2 * here + i < a.length; i++) {
      for (int j = 0; j < 2; j++) {
        double partial = byRow[i] * byColumn[j] * (0.3 + random.nextDouble());
        add(a, there, 2 * here + i, 2 * here + j, -partial);
        add(a, there, 2 * here + i, 2 * other + j, partial * (0.5 + random.nextDouble()));
      }
    }
  }

  private static void add(double[][] a, boolean[][] there, int row, int column, double value) {
    if (column < a.length) {
      a[row][column] += value;
      there[row][column] = true;
    }
  }

  /** A sample of the places that are marked. */
  static Sample sample(double[][] a, boolean[][] there) {
    int n = a.length;
    int size = 0;
    for (boolean[] row : there) {
      for (boolean b : row) {
        size += b ? 1 : 0;
      }
    }
    int[] rows = new int[size];
    int[] columns = new int[size];
    double[] values = new double[size];
    int s = 0;
    for (int r = 0; r < n; r++) {
      for (int c = 0; c < n; c++) {
        if (there[r][c]) {
          rows[s] = r;
          columns[s] = c;
          values[s++] = a[r][c];
        }
      }
    }
    return new Sample(SparsePattern.of(n, rows, columns), values);
  }

  /** A sample of all places that are not zero. */
  static Sample sample(double[][] a) {
    boolean[][] there = new boolean[a.length][a.length];
    for (int r = 0; r < a.length; r++) {
      for (int c = 0; c < a.length; c++) {
        there[r][c] = a[r][c] != 0;
      }
    }
    return sample(a, there);
  }

  static double[] vector(int n, Random random) {
    return random.doubles(n, -1, 1).toArray();
  }

  static double[][] transposed(double[][] a) {
    double[][] t = new double[a.length][a.length];
    for (int r = 0; r < a.length; r++) {
      for (int c = 0; c < a.length; c++) {
        t[c][r] = a[r][c];
      }
    }
    return t;
  }

  /** Largest difference over the largest value. */
  static double distance(double[] x, double[] y) {
    double difference = 0;
    double size = Double.MIN_NORMAL;
    for (int i = 0; i < x.length; i++) {
      difference = Math.max(difference, Math.abs(x[i] - y[i]));
      size = Math.max(size, Math.abs(y[i]));
    }
    return difference / size;
  }
}
