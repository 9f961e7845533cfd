package dev.offtake.sparse;

import java.util.Arrays;

/**
 * The numbers of both factors for one sequence of pivots: P (R A C) Q = L U, with a unit diagonal
 * in U.
 */
final class Factors {
  /** Longest list of operations that is written out; beyond it the list would leave the caches. */
  private static final long LONGEST_LIST = 4_000_000;

  /** Growth beyond which a solution could lose more than a refinement gives back. */
  static final double LARGEST_GROWTH = 1e3;

  /**
   * A pivot may fall to this share of what it was when it was chosen, unless it is still above the
   * next.
   */
  private static final double SMALLEST_SHARE = 1e-3;

  /** A scaled pivot of at least this size is never in doubt. */
  private static final double SAFE_PIVOT = 1e-10;

  private final SparsePattern pattern;
  private final FactorLayout layout;
  private final Elimination elimination;
  private final double[] entries;
  private final double[] inverse;
  private final double[] floor;
  private final double[] rowScale;
  private final double[] columnScale;
  private final double[] slotScale;
  private boolean scaled;
  private double growth;

  Factors(SparsePattern pattern, PivotSequence pivots, double[] columnScale) {
    this(pattern, pivots, columnScale, LONGEST_LIST);
  }

  Factors(SparsePattern pattern, PivotSequence pivots, double[] columnScale, long longestList) {
    this.pattern = pattern;
    this.columnScale = columnScale;
    layout = new FactorLayout(pattern, pivots);
    long operations = pivots.operations();
    elimination =
        operations <= longestList
            ? new ListedElimination(layout, (int) operations)
            : new LookingElimination(layout);
    entries = new double[layout.step.length];
    inverse = new double[layout.n];
    floor = new double[layout.n];
    rowScale = new double[layout.n];
    slotScale = new double[pattern.size()];
  }

  double growth() {
    return growth;
  }

  /** Remembers the present pivots as what later ones are measured by. */
  void keepPivots() {
    for (int m = 0; m < floor.length; m++) {
      floor[m] = Math.min(SAFE_PIVOT, SMALLEST_SHARE / Math.abs(inverse[m]));
    }
  }

  /**
   * Factors new values; false when the sequence does not suit them. The scales of the last values
   * are tried first: along a sweep they stay good.
   */
  boolean compute(double[] values) {
    return (scaled && eliminate(values)) || (scale(values) && eliminate(values));
  }

  private boolean scale(double[] values) {
    scaled = true;
    for (int m = 0; m < layout.n; m++) {
      int row = layout.row[m];
      double scale = Scales.ofRow(pattern, values, columnScale, row);
      scaled &= scale > 0;
      rowScale[m] = scale;
      int end = pattern.start(row + 1);
      for (int s = pattern.start(row); s < end; s++) {
        slotScale[s] = scale * columnScale[pattern.column(s)];
      }
    }
    return scaled;
  }

  private boolean eliminate(double[] values) {
    growth = 0;
    for (int m = 0; m < layout.n; m++) {
      if (!load(m, values)) {
        return false;
      }
      elimination.row(m, entries);
      double pivot = entries[layout.diagonal[m]];
      // Written so that a NaN fails.
      if (!(Math.abs(pivot) > floor[m])) {
        return false;
      }
      finish(m, 1 / pivot);
    }
    return growth <= LARGEST_GROWTH;
  }

  /** Loads a row; false when a value is not finite. */
  private boolean load(int m, double[] values) {
    int row = layout.row[m];
    Arrays.fill(entries, layout.start[m], layout.start[m + 1], 0);
    double nothing = 0;
    int end = pattern.start(row + 1);
    for (int s = pattern.start(row); s < end; s++) {
      double scaled = values[s] * slotScale[s];
      entries[layout.entryOfSlot[s]] = scaled;
      nothing += 0 * scaled;
    }
    return nothing == 0;
  }

  private void finish(int m, double reciprocal) {
    inverse[m] = reciprocal;
    int diagonal = layout.diagonal[m];
    for (int e = diagonal + 1; e < layout.start[m + 1]; e++) {
      entries[e] *= reciprocal;
    }
    double largest = growth;
    for (int e = layout.start[m]; e < diagonal; e++) {
      // Math.max hands a NaN on.
      largest = Math.max(largest, Math.abs(entries[e] * inverse[layout.step[e]]));
    }
    growth = largest;
  }

  /**
   * Solves with the factors.
   *
   * @param rhs right-hand side, untouched
   * @param work receives nothing of use; length n
   * @param x receives the solution; not {@code rhs}
   */
  void solve(double[] rhs, double[] work, double[] x) {
    int[] step = layout.step;
    for (int m = 0; m < layout.n; m++) {
      double sum = rhs[layout.row[m]] * rowScale[m];
      for (int e = layout.start[m]; e < layout.diagonal[m]; e++) {
        sum -= entries[e] * work[step[e]];
      }
      work[m] = sum * inverse[m];
    }
    for (int m = layout.n - 1; m >= 0; m--) {
      double sum = work[m];
      for (int e = layout.diagonal[m] + 1; e < layout.start[m + 1]; e++) {
        sum -= entries[e] * work[step[e]];
      }
      work[m] = sum;
      x[layout.column[m]] = sum * columnScale[layout.column[m]];
    }
  }

  /** As {@link #solve}, with the transposed matrix. */
  void solveTransposed(double[] rhs, double[] work, double[] x) {
    int[] step = layout.step;
    for (int m = 0; m < layout.n; m++) {
      work[m] = rhs[layout.column[m]] * columnScale[layout.column[m]];
    }
    for (int m = 0; m < layout.n; m++) {
      for (int e = layout.diagonal[m] + 1; e < layout.start[m + 1]; e++) {
        work[step[e]] -= entries[e] * work[m];
      }
    }
    for (int m = layout.n - 1; m >= 0; m--) {
      double value = work[m] * inverse[m];
      for (int e = layout.start[m]; e < layout.diagonal[m]; e++) {
        work[step[e]] -= entries[e] * value;
      }
      x[layout.row[m]] = value * rowScale[m];
    }
  }
}
