package dev.offtake.time;

import dev.offtake.sparse.SparsePattern;

/** A plain system dy/dt = f(y), of which some rows may say 0 = f(y), as a model. */
abstract class Rates implements Model {
  private final int size;
  private final SparsePattern pattern;
  private final double[] kept;
  private final double[] at;
  private final double[] f;
  private final double[][] slopes;
  private final double least;
  private double inverse;

  /**
   * Prepares.
   *
   * @param size number of states
   * @param least size below which a state is told from nothing
   */
  Rates(int size, double least) {
    this.size = size;
    this.least = least;
    int[] rows = new int[size * size];
    int[] columns = new int[size * size];
    for (int k = 0; k < rows.length; k++) {
      rows[k] = k / size;
      columns[k] = k % size;
    }
    pattern = SparsePattern.of(size, rows, columns);
    kept = new double[size];
    at = new double[size];
    f = new double[size];
    slopes = new double[size][size];
  }

  abstract void f(double[] y, double[] out);

  /** Slopes of f; those that are not written are 0. */
  abstract void jacobian(double[] y, double[][] out);

  /** Steps with error control; returns how many steps were made. */
  static int run(Model model, double[] y, double from, double until, double tolerance) {
    return run(model, y, from, until, tolerance, until - from);
  }

  /** The same with steps of at most a length. */
  static int run(
      Model model, double[] y, double from, double until, double tolerance, double longest) {
    Step step = new Step(model);
    step.start(from, y);
    double time = from;
    double length = 1e-6 * (until - from);
    int steps = 0;
    int tries = 0;
    while (time < until) {
      if (++tries > 5_000_000 || !(length > 1e-22 * (until - from))) {
        throw new AssertionError("stuck at " + time + " with steps of " + length);
      }
      double h = Math.min(Math.min(length, longest), until - time);
      double error = step.make(time, h, tolerance);
      double grows = Math.min(4, 0.9 * Math.pow(Math.max(error, 1e-9), -1 / 3.0));
      length = error < 1e9 ? h * Math.max(0.2, grows) : h / 4;
      if (error <= 1) {
        time = h == until - time ? until : time + h;
        step.goOn(h);
        steps++;
      }
    }
    System.arraycopy(step.beginning(), 0, y, 0, y.length);
    return steps;
  }

  /** Steps of one length. */
  static void run(Model model, double[] y, double length, int steps) {
    Step step = new Step(model);
    step.start(0, y);
    for (int i = 0; i < steps; i++) {
      step.make(i * length, length, 1e-10);
      step.goOn(length);
    }
    System.arraycopy(step.beginning(), 0, y, 0, y.length);
  }

  @Override
  public int size() {
    return size;
  }

  @Override
  public int columns() {
    return size;
  }

  @Override
  public SparsePattern pattern() {
    return pattern;
  }

  @Override
  public boolean stores(int row) {
    return true;
  }

  @Override
  public void begin(double time, double newInverse, double[] from) {
    inverse = newInverse;
    System.arraycopy(from, 0, kept, 0, size);
  }

  @Override
  public void evaluate(double[] y) {
    System.arraycopy(y, 0, at, 0, size);
    f(at, f);
  }

  @Override
  public void residual(double[] out) {
    for (int i = 0; i < size; i++) {
      out[i] = f[i] - (stores(i) ? (at[i] - kept[i]) * inverse : 0);
    }
  }

  @Override
  public void jacobian(double[] values) {
    jacobian(at, slopes);
    for (int i = 0; i < size; i++) {
      for (int k = 0; k < size; k++) {
        values[pattern.slot(i, k)] = slopes[i][k] - (i == k && stores(i) ? inverse : 0);
      }
    }
  }

  @Override
  public void gained(double[] move, double[] owed, double[] out) {
    for (int i = 0; i < size; i++) {
      out[i] = stores(i) ? at[i] + move[i] : 0;
    }
  }

  @Override
  public void finish(double[] y) {}

  @Override
  public void stored(double[] y, double[] out) {
    for (int i = 0; i < size; i++) {
      out[i] = stores(i) ? y[i] : 0;
    }
  }

  @Override
  public void rates(double time, double[] y, double[] out) {
    f(y, out);
    slopes(y, out, out);
  }

  @Override
  public void slopes(double[] y, double[] rates, double[] out) {
    for (int i = 0; i < size; i++) {
      out[i] = stores(i) ? rates[i] : 0;
    }
  }

  @Override
  public void unslope(double[] y, double[] rates, double[] out) {
    slopes(y, rates, out);
  }

  @Override
  public void allowed(double[] y, double tolerance, double[] out) {
    for (int i = 0; i < size; i++) {
      out[i] = tolerance * Math.max(Math.abs(y[i]), least);
    }
  }

  @Override
  public void leave(double newInverse, double[] errors) {
    for (int i = 0; i < size; i++) {
      errors[i] = stores(i) ? errors[i] * newInverse : 0;
    }
  }
}
