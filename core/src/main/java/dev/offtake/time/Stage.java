package dev.offtake.time;

import dev.offtake.sparse.SparseLu;

/**
 * Solves one stage of a model by Newton's method with fresh slopes.
 *
 * <p>The error that a step leaves is estimated from how fast steps shrink; it ends when that is a
 * small share of what a time step may err. Allocates nothing.
 */
final class Stage {
  private static final int MOST = 12;

  /** Share of the allowed error that the iteration may leave. */
  private static final double LEFT = 0.01;

  /** A first step of this size, in allowed errors, needs no second. */
  private static final double TINY = 0.02;

  /** Steps that grow by this factor lead nowhere. */
  private static final double WORSE = 10;

  private final Model model;
  private final SparseLu lu;
  private final double[] values;
  private final double[] residual;
  private final double[] move;
  private final double[] last;
  private int iterations;
  private int factors;
  private int worst;

  Stage(Model model) {
    this.model = model;
    lu = new SparseLu(model.pattern());
    values = new double[model.pattern().size()];
    residual = new double[model.columns()];
    move = new double[model.columns()];
    last = new double[model.columns()];
  }

  /** Steps of all solutions so far. */
  int iterations() {
    return iterations;
  }

  /** Factors made so far. */
  int factors() {
    return factors;
  }

  /** The unknown that moved most, in allowed errors, in the last step. */
  int worst() {
    return worst;
  }

  /**
   * Solves the stage that the model has prepared.
   *
   * @param y guess of the unknowns; receives the state, complete
   * @param allowed error of each state
   * @param stored receives what each state stores
   * @return whether it was found
   */
  boolean solve(double[] y, double[] allowed, double[] stored) {
    double before = Double.POSITIVE_INFINITY;
    for (int i = 0; i < MOST; i++) {
      model.evaluate(y);
      model.residual(residual);
      if (!direction()) {
        return false;
      }
      double size = size(allowed);
      if (!(size < Double.POSITIVE_INFINITY) || (i > 2 && size > WORSE * before)) {
        return false;
      }
      // Flow through a wide port goes as an odd square root, on which whole steps go to and fro.
      double share = i > 0 && turnsBack(allowed) ? before / (before + size) : 1;
      for (int c = 0; c < move.length; c++) {
        last[c] = share * move[c];
        y[c] += last[c];
      }
      double shrinks = i == 0 ? 1 : size / before;
      double left = share < 1 ? size : size * Math.min(1, shrinks);
      if (left <= (i == 0 ? TINY : LEFT)) {
        model.gained(last, residual, stored);
        model.finish(y);
        System.arraycopy(y, last.length, stored, last.length, y.length - last.length);
        return true;
      }
      before = share * size;
    }
    return false;
  }

  /** Whether a step that is not much shorter leads back to where the last came from. */
  private boolean turnsBack(double[] allowed) {
    double along = 0;
    double now = 0;
    double then = 0;
    for (int c = 0; c < move.length; c++) {
      double a = move[c] / allowed[c];
      double b = last[c] / allowed[c];
      along += a * b;
      now += a * a;
      then += b * b;
    }
    return along < -0.5 * Math.sqrt(now * then) && now > 0.1 * then;
  }

  private boolean direction() {
    model.jacobian(values);
    iterations++;
    factors++;
    if (!lu.refactor(values) && !lu.order(values)) {
      worst = Math.max(0, lu.singularRow());
      return false;
    }
    for (int r = 0; r < residual.length; r++) {
      residual[r] = -residual[r];
    }
    lu.solveUnrefined(residual, move);
    return true;
  }

  /** Largest move in allowed errors; not a number when one is not. */
  private double size(double[] allowed) {
    double most = 0;
    for (int c = 0; c < move.length; c++) {
      double share = Math.abs(move[c]) / allowed[c];
      if (!(share <= most)) {
        most = share;
        worst = c;
      }
    }
    return most;
  }

  /**
   * Turns what rows leave over into errors of the unknowns, with the factors of the last step.
   *
   * @param errors a value for each row; receives one for each unknown
   */
  void toUnknowns(double[] errors) {
    System.arraycopy(errors, 0, residual, 0, residual.length);
    lu.solveUnrefined(residual, move);
    System.arraycopy(move, 0, errors, 0, move.length);
  }
}
