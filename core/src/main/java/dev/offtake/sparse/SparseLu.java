package dev.offtake.sparse;

import org.jspecify.annotations.Nullable;

/**
 * LU factors of matrices of one pattern.
 *
 * <p>Usage: {@link #order} once, then {@link #refactor} for each new matrix and {@link #order}
 * again whenever that returns false. Belongs to one thread; {@code refactor} and the solves
 * allocate nothing.
 */
public final class SparseLu {
  /** Sequences of pivots that are kept: a sweep goes through the same few again and again. */
  private static final int MOST_KNOWN = 6;

  private final SparsePattern pattern;
  private final double[] kept;
  private final double[] given;
  private final double[] residual;
  private final double[] correction;
  private final double[] work;
  private final @Nullable Factors[] known = new Factors[MOST_KNOWN];
  private @Nullable Factors factors;
  private int next;
  private boolean ready;
  private int singularRow = -1;

  /** Prepares for a pattern. */
  public SparseLu(SparsePattern pattern) {
    this.pattern = pattern;
    int n = pattern.order();
    kept = new double[pattern.size()];
    given = new double[n];
    residual = new double[n];
    correction = new double[n];
    work = new double[n];
  }

  /**
   * Chooses a pivot sequence for the values and factors.
   *
   * @param values one for each slot of the pattern; copied
   * @return false when the matrix is singular to working precision or a value is not finite; there
   *     are no factors then and {@link #singularRow()} tells where
   */
  public boolean order(double[] values) {
    keep(values);
    factors = null;
    Scales scales = new Scales(pattern, kept);
    singularRow = scales.badRow();
    if (singularRow >= 0) {
      return false;
    }
    PivotSequence pivots = PivotSearch.run(pattern, scales.apply(kept));
    singularRow = pivots.failedRow();
    if (!pivots.complete()) {
      return false;
    }
    Factors fresh = new Factors(pattern, pivots, scales.columns());
    ready = fresh.compute(kept);
    if (ready) {
      fresh.keepPivots();
      factors = fresh;
      known[next] = fresh;
      next = (next + 1) % MOST_KNOWN;
    }
    return ready;
  }

  /**
   * Factors with the last sequence, or with one that was chosen before it.
   *
   * @param values one for each slot of the pattern; copied
   * @return false when no such sequence suits the values any more (growth, a vanishing pivot, a
   *     value that is not finite) or there is none yet; there are no factors then until {@link
   *     #order} has found a new sequence
   */
  public boolean refactor(double[] values) {
    keep(values);
    Factors last = factors;
    if (last == null) {
      return false;
    }
    ready = last.compute(kept);
    for (int i = 0; i < MOST_KNOWN && !ready; i++) {
      Factors other = known[i];
      if (other != null && other != last && other.compute(kept)) {
        factors = other;
        ready = true;
      }
    }
    return ready;
  }

  /** Whether there are factors to solve with. */
  public boolean ready() {
    return ready;
  }

  private void keep(double[] values) {
    if (values.length != kept.length) {
      throw new IllegalArgumentException(
          "The pattern has %d places, but %d values came.".formatted(kept.length, values.length));
    }
    ready = false;
    System.arraycopy(values, 0, kept, 0, kept.length);
  }

  /**
   * Solves A x = rhs with the last factors and one step of refinement.
   *
   * @param rhs right-hand side, n values
   * @param x receives the solution; may be {@code rhs} itself
   * @throws IllegalStateException when there are no factors
   */
  public void solve(double[] rhs, double[] x) {
    Factors last = begin(rhs);
    last.solve(given, work, x);
    System.arraycopy(given, 0, residual, 0, given.length);
    for (int r = 0; r < given.length; r++) {
      double sum = residual[r];
      for (int s = pattern.start(r); s < pattern.start(r + 1); s++) {
        sum -= kept[s] * x[pattern.column(s)];
      }
      residual[r] = sum;
    }
    last.solve(residual, work, correction);
    add(x);
  }

  /**
   * Solves A x = rhs with the last factors as they are; enough where the answer is improved anyway,
   * as a step of Newton's is.
   *
   * @param rhs right-hand side, n values
   * @param x receives the solution; not {@code rhs} itself
   * @throws IllegalStateException when there are no factors
   */
  public void solveUnrefined(double[] rhs, double[] x) {
    begin(rhs).solve(rhs, work, x);
  }

  /**
   * Solves Aᵀ x = rhs with the last factors and one step of refinement.
   *
   * @param rhs right-hand side, n values
   * @param x receives the solution; may be {@code rhs} itself
   * @throws IllegalStateException when there are no factors
   */
  public void solveTransposed(double[] rhs, double[] x) {
    Factors last = begin(rhs);
    last.solveTransposed(given, work, x);
    System.arraycopy(given, 0, residual, 0, given.length);
    for (int r = 0; r < given.length; r++) {
      for (int s = pattern.start(r); s < pattern.start(r + 1); s++) {
        residual[pattern.column(s)] -= kept[s] * x[r];
      }
    }
    last.solveTransposed(residual, work, correction);
    add(x);
  }

  private Factors begin(double[] rhs) {
    Factors last = factors;
    if (last == null || !ready) {
      throw new IllegalStateException("There are no factors: order or refactor a matrix first.");
    }
    System.arraycopy(rhs, 0, given, 0, given.length);
    return last;
  }

  private void add(double[] x) {
    for (int i = 0; i < correction.length; i++) {
      x[i] += correction[i];
    }
  }

  /**
   * Largest |l<sub>ij</sub> / l<sub>jj</sub>| of the last factors, on scaled rows: at most about 2
   * with a fresh sequence; 0 when there are no factors or nothing was eliminated.
   */
  public double growth() {
    Factors last = factors;
    return last == null ? 0 : last.growth();
  }

  /**
   * Row at which the last {@link #order} failed, dependent on others or not finite; −1 when it did
   * not fail.
   */
  public int singularRow() {
    return singularRow;
  }
}
