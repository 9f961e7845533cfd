package dev.offtake.measure;

import dev.offtake.network.Balance;
import dev.offtake.network.Equations;
import dev.offtake.sparse.SparsePattern;

/**
 * The equations of a network given to SUNDIALS KINSOL with KLU, which calls back for residual and
 * Jacobian. Needs the library that measure/peer/run makes.
 *
 * <p>Scaled so that a residual of 1 is what a balance may leave over at the last answer, with a
 * tolerance of 1: it stops where Offtake stops.
 */
final class Kinsol {
  private static final double KELVIN = 1.0 / 300;

  static {
    System.loadLibrary("offtakepeer");
  }

  private final Equations equations;
  private final Balance balance;
  private final long handle;
  private final double[] start;
  private final double[] uscale;
  private final double[] fscale;
  private final long[] counts = new long[3];

  /** What is called back; reached from C by the names of its methods. */
  private static final class Callbacks {
    private final Equations equations;
    final double[] x;
    final double[] f;
    final double[] values;

    Callbacks(Equations equations) {
      this.equations = equations;
      x = new double[equations.size()];
      f = new double[equations.size()];
      values = new double[equations.pattern().size()];
    }

    /** Residual at x. */
    void residual() {
      for (int c = 0; c < x.length; c++) {
        equations.evaluation().variables[equations.variableOf(c)] = x[c];
      }
      equations.evaluate();
      equations.residual(f);
    }

    /** Jacobian at x, where KINSOL has always asked for the residual just before. */
    void jacobian() {
      equations.jacobian(values);
    }

    /** Nothing. */
    void nothing() {}
  }

  /**
   * Hands the equations over.
   *
   * @param equations at a state that balances, evaluated
   * @param keepAnalysis whether the analysis of the pattern serves all solves
   */
  Kinsol(Equations equations, boolean keepAnalysis) {
    this.equations = equations;
    balance = new Balance(equations);
    int n = equations.size();
    start = new double[n];
    uscale = new double[n];
    fscale = new double[n];
    for (int c = 0; c < n; c++) {
      uscale[c] = c < 2 * equations.innerPoints() && c % 2 == 1 ? KELVIN : 1;
    }
    SparsePattern pattern = equations.pattern();
    int[] starts = new int[n + 1];
    int[] columns = new int[pattern.size()];
    for (int r = 0; r <= n; r++) {
      starts[r] = pattern.start(r);
    }
    for (int s = 0; s < columns.length; s++) {
      columns[s] = pattern.column(s);
    }
    Callbacks back = new Callbacks(equations);
    handle = create(back, back.x, back.f, back.values, starts, columns);
    if (handle == 0) {
      throw new IllegalStateException("KINSOL did not take the equations");
    }
    balanced();
    solve(currentStart(), false);
    if (keepAnalysis) {
      keepAnalysis(handle);
    }
  }

  /** Where a solve starts from: the variables in the order of the columns. */
  double[] currentStart() {
    for (int c = 0; c < start.length; c++) {
      start[c] = equations.evaluation().variables[equations.variableOf(c)];
    }
    return start;
  }

  /**
   * Solves.
   *
   * @param from where to start; receives the answer
   * @param lineSearch whether steps are shortened
   * @return whether KINSOL says that it converged
   */
  boolean solve(double[] from, boolean lineSearch) {
    int result = solve(handle, from, uscale, fscale, lineSearch);
    counts(handle, counts);
    return result == 0 || result == 1;
  }

  /** Judges the state that was evaluated last, and scales by it what is solved next. */
  boolean balanced() {
    boolean holds = balance.holds();
    int inner = equations.innerPoints();
    for (int i = 0; i < inner; i++) {
      fscale[2 * i] = 1 / balance.massAllowance(i);
      fscale[2 * i + 1] = 1 / balance.energyAllowance(i);
    }
    for (int r = 2 * inner; r < fscale.length; r++) {
      fscale[r] = 1 / Balance.TOLERANCE;
    }
    return holds;
  }

  /** Newton steps of the last solve. */
  long steps() {
    return counts[0];
  }

  /** Times that the last solve has called back. */
  long callbacks() {
    return counts[1] + counts[2];
  }

  /** Calls back some times without doing anything. */
  void callBack(int times) {
    callBack(handle, times);
  }

  private static native long create(
      Object system, double[] x, double[] f, double[] values, int[] start, int[] columns);

  private static native void keepAnalysis(long handle);

  private static native int solve(
      long handle, double[] start, double[] uscale, double[] fscale, boolean lineSearch);

  private static native void counts(long handle, long[] counts);

  private static native void callBack(long handle, int times);
}
