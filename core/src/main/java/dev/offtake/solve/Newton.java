package dev.offtake.solve;

import dev.offtake.network.Balance;
import dev.offtake.network.Equations;
import dev.offtake.part.Evaluation;
import dev.offtake.sparse.SparseLu;

/**
 * Damped Newton steps on the equations of a network, with an optional storage term that makes them
 * steps in pseudo-time.
 *
 * <p>The merit of a state is the sum of squares of residuals, each over the scale of its point; the
 * scale is kept while one step is shortened, so that a shorter step is judged by the same measure.
 */
final class Newton {
  private static final double LARGEST_LN_P = 0.7;
  private static final double LARGEST_T = 150;
  private static final double SUFFICIENT = 1e-4;
  private static final int HALVINGS = 12;

  private final Equations equations;
  private final Balance balance;
  private final SparseLu lu;
  private final double[] values;
  private final double[] residual;
  private final double[] weight;
  private final double[] step;
  private final double[] from;
  private final double[] storage;
  private boolean ordered;
  private int iterations;

  Newton(Equations equations, Balance balance) {
    this.equations = equations;
    this.balance = balance;
    int n = equations.size();
    lu = new SparseLu(equations.pattern());
    values = new double[equations.pattern().size()];
    residual = new double[n];
    weight = new double[n];
    step = new double[n];
    from = new double[n];
    storage = new double[n];
  }

  /** Steps made since the counter was last reset. */
  int iterations() {
    return iterations;
  }

  void resetIterations() {
    iterations = 0;
  }

  /**
   * Steps until the state balances.
   *
   * @param limit most steps
   * @return true when it balances; the equations hold the state in either case
   */
  boolean run(int limit) {
    equations.evaluate();
    for (int i = 0; i < limit; i++) {
      if (balance.holds() && sensesHold()) {
        return true;
      }
      if (!step(Double.POSITIVE_INFINITY)) {
        return false;
      }
    }
    return balance.holds() && sensesHold();
  }

  private boolean sensesHold() {
    equations.residual(residual);
    for (int r = 2 * equations.innerPoints(); r < residual.length; r++) {
      if (!(Math.abs(residual[r]) <= Balance.TOLERANCE)) {
        return false;
      }
    }
    return true;
  }

  /** Merit of the state that was last evaluated, with the scales that {@link #scale()} set. */
  double merit() {
    equations.residual(residual);
    double sum = 0;
    for (int r = 0; r < residual.length; r++) {
      double scaled = residual[r] * weight[r];
      sum += scaled * scaled;
    }
    return sum;
  }

  /** Sets the scales from the state that was last evaluated. */
  void scale() {
    balance.holds();
    Evaluation e = equations.evaluation();
    for (int i = 0; i < equations.innerPoints(); i++) {
      double s = balance.scale(i);
      weight[2 * i] = 1 / s;
      weight[2 * i + 1] = 1 / (s * e.gas[i].cp * e.gas[i].t);
    }
    for (int r = 2 * equations.innerPoints(); r < weight.length; r++) {
      weight[r] = 1;
    }
  }

  /**
   * One step from the state that was last evaluated.
   *
   * @param seconds length of the step in pseudo-time; infinite for Newton
   * @return false when no step improves the state
   */
  boolean step(double seconds) {
    scale();
    double before = merit();
    if (!direction(seconds)) {
      return false;
    }
    iterations++;
    double length = limit();
    save();
    for (int halving = 0; halving <= HALVINGS; halving++) {
      move(length);
      equations.evaluate();
      double after = merit();
      boolean enough = after <= (1 - SUFFICIENT * length) * before;
      // A step in pseudo-time may pass through worse states, as filling a duct does; only nonsense
      // is refused.
      boolean tolerable = seconds < Double.POSITIVE_INFINITY && after < 1e4 * before;
      if (enough || tolerable || after < 1e-26) {
        return true;
      }
      length /= 2;
    }
    move(0);
    equations.evaluate();
    return false;
  }

  private boolean direction(double seconds) {
    equations.jacobian(values);
    if (seconds < Double.POSITIVE_INFINITY) {
      addStorage(seconds);
    }
    if (!factor()) {
      return false;
    }
    for (int r = 0; r < residual.length; r++) {
      residual[r] = -residual[r];
    }
    lu.solve(residual, step);
    for (double s : step) {
      if (!Double.isFinite(s)) {
        return false;
      }
    }
    return true;
  }

  private boolean factor() {
    if (ordered && lu.refactor(values)) {
      return true;
    }
    ordered = lu.order(values);
    return ordered;
  }

  /** Subtracts what each point stores in the given time: V/(R T) dp for mass, m cp dT for heat. */
  private void addStorage(double seconds) {
    Evaluation e = equations.evaluation();
    for (int i = 0; i < equations.innerPoints(); i++) {
      double volume = equations.network().points().get(i).volume();
      double held = volume * e.gas[i].p / (dev.offtake.air.Air.R * e.gas[i].t);
      storage[2 * i] = held;
      storage[2 * i + 1] = held * e.gas[i].cp;
      for (int r = 2 * i; r <= 2 * i + 1; r++) {
        values[equations.pattern().slot(r, r)] -= storage[r] / seconds;
      }
    }
  }

  /** Share of the step that keeps every variable within reach of its present value. */
  private double limit() {
    double share = 1;
    for (int c = 0; c < step.length; c++) {
      boolean temperature = c < 2 * equations.innerPoints() && c % 2 == 1;
      double largest = temperature ? LARGEST_T : LARGEST_LN_P;
      if (Math.abs(step[c]) > largest * (1 / share)) {
        share = largest / Math.abs(step[c]);
      }
    }
    return share;
  }

  private void save() {
    double[] x = equations.evaluation().variables;
    for (int c = 0; c < from.length; c++) {
      from[c] = x[equations.variableOf(c)];
    }
  }

  private void move(double length) {
    double[] x = equations.evaluation().variables;
    for (int c = 0; c < from.length; c++) {
      x[equations.variableOf(c)] = from[c] + length * step[c];
    }
  }

  /** Size of the last step taken in full, for the control of pseudo-time. */
  double largestMove() {
    double largest = 0;
    double[] x = equations.evaluation().variables;
    for (int c = 0; c < from.length; c++) {
      boolean temperature = c < 2 * equations.innerPoints() && c % 2 == 1;
      double move = Math.abs(x[equations.variableOf(c)] - from[c]);
      largest = Math.max(largest, temperature ? move / LARGEST_T : move / LARGEST_LN_P);
    }
    return largest;
  }
}
