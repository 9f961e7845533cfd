package dev.offtake.solve;

import dev.offtake.air.Air;
import dev.offtake.air.GasState;
import dev.offtake.network.Balance;
import dev.offtake.network.Equations;
import dev.offtake.part.Evaluation;
import dev.offtake.sparse.SparseLu;
import dev.offtake.sparse.SparsePattern;
import java.util.Arrays;

/**
 * Damped Newton steps on the equations of a network, with an optional storage term that makes them
 * steps in pseudo-time.
 *
 * <p>The merit of a state is the sum of squares of residuals, each over what a balance may leave
 * there; that measure is kept while one step is shortened. A step is also good when it shortens the
 * one that would follow.
 */
final class Newton {
  /** Balances that steps are made on. */
  private enum Rows {
    ALL,
    AIR,
    HEAT
  }

  /** Most steps on one kind of balance. */
  private static final int SORTING = 100;

  /** First step in pseudo-time from a state that may be anything. */
  static final double FAR = 1e-4;

  /** First step in pseudo-time from a state that is nearly right. */
  static final double NEAR = 1;

  /** Multiple of what a balance accepts at which sorting is good enough. */
  private static final double SORTED = 1e6;

  private static final double LARGEST_LN_P = 0.7;
  private static final double LARGEST_T = 150;

  /** A step never takes more than this share of a temperature, so that none becomes negative. */
  private static final double LARGEST_T_SHARE = 0.3;

  private static final double SUFFICIENT = 1e-4;
  private static final int HALVINGS = 12;
  private static final int FEW_HALVINGS = 2;

  /** Share of the merit that a step may leave over without a shorter one being tried. */
  private static final double GOOD = 0.25;

  /** How much worse a step in pseudo-time may leave things. */
  private static final double WORSE = 1e4;

  /** Volume, m³, that every point has in pseudo-time, so that none is without storage. */
  private static final double LEAST_VOLUME = 1e-4;

  private final Equations equations;
  private final Balance balance;
  private final SparseLu all;
  private final SparseLu air;
  private final SparseLu heat;
  private final double[] values;
  private final double[] residual;
  private final double[] weight;
  private final double[] step;
  private final double[] from;
  private final double[] storage;
  private final double noise;
  private final Clocks clocks;
  private final Nearness nearness;
  private Rows rows = Rows.ALL;
  private boolean near;
  private int patience = HALVINGS;
  private int iterations;

  Newton(Equations equations, Balance balance) {
    this.equations = equations;
    this.balance = balance;
    int n = equations.size();
    all = new SparseLu(equations.pattern());
    air = new SparseLu(equations.pattern());
    heat = new SparseLu(equations.pattern());
    values = new double[equations.pattern().size()];
    residual = new double[n];
    weight = new double[n];
    step = new double[n];
    from = new double[n];
    storage = new double[n];
    noise = n;
    clocks = new Clocks(equations.innerPoints());
    nearness = new Nearness(largestSteps(n, equations.innerPoints()));
  }

  /** By pressures and temperatures; what is sensed follows from them. */
  private static double[] largestSteps(int columns, int points) {
    double[] largest = new double[columns];
    Arrays.fill(largest, Double.POSITIVE_INFINITY);
    for (int c = 0; c < 2 * points; c++) {
      largest[c] = c % 2 == 1 ? LARGEST_T : LARGEST_LN_P;
    }
    return largest;
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
   * @return true when it balances; the equations hold the state, evaluated, in either case
   */
  boolean run(int limit) {
    near = false;
    return reach(limit);
  }

  /**
   * Steps as {@link #run} does from a state that is near by, as the last of a way is: steps are
   * also taken for good that only shorten what would follow. From a state that may be anything that
   * reaches more states, but not always the one that {@link #run} would.
   */
  boolean runOn(int limit) {
    near = true;
    return reach(limit);
  }

  /**
   * Steps as {@link #runOn} does, but not where a step has to be cut to a small part: a shorter
   * stride along the way is then the better choice.
   */
  boolean runAlong(int limit) {
    patience = FEW_HALVINGS;
    boolean reached = runOn(limit);
    patience = HALVINGS;
    return reached;
  }

  private boolean reach(int limit) {
    evaluate();
    for (int i = 0; !balanced(); i++) {
      if (i == limit || !step(Double.POSITIVE_INFINITY)) {
        return false;
      }
    }
    return true;
  }

  /**
   * Follows a change outside to first order from a state that balances, whose evaluation is still
   * at hand.
   *
   * @param change of each variable of the boundary
   * @return false when there is no such step or it would lead too far
   */
  boolean follow(double[] change) {
    rows = Rows.ALL;
    equations.jacobian(values);
    equations.boundaryShift(change, residual);
    if (!factor() || !solve() || limit() < 1) {
      return false;
    }
    save();
    move(1);
    return true;
  }

  /**
   * Steps on the balances of air alone with temperatures held, then of heat alone with pressures
   * held, so far that it is settled which way air moves and where it comes from. Where a dead leg
   * moves the wrong way for a moment, a full step would carry its temperature off to the air
   * outside, and everything else would have to wait for it.
   *
   * @param seconds first step in pseudo-time, {@link #FAR} or {@link #NEAR}
   * @return whether both were settled
   */
  boolean sort(double seconds) {
    evaluate();
    rows = Rows.AIR;
    boolean sorted = fill(SORTED, seconds);
    rows = Rows.HEAT;
    sorted &= sorted && fill(SORTED, seconds);
    rows = Rows.ALL;
    return sorted;
  }

  /**
   * Fills the points in pseudo-time, with steps of each that grow until they are Newton's.
   *
   * @param enough multiple of what a balance accepts at which to stop
   * @param first length of the first step in pseudo-time
   * @return whether that was reached
   */
  private boolean fill(double enough, double first) {
    clocks.start(first);
    int most = first == FAR ? SORTING : SORTING / 4;
    for (int i = 0; i < most; i++) {
      balanced();
      weigh();
      if (merit() <= enough * enough) {
        return true;
      }
      if (!go(!clocks.over())) {
        return false;
      }
      for (int k = 0; k < equations.innerPoints(); k++) {
        clocks.moved(k, moved(k));
      }
    }
    return false;
  }

  /** Evaluates the present variables and what does not balance there. */
  void evaluate() {
    equations.evaluate();
    equations.residual(residual);
  }

  /**
   * Judges the state that {@link #evaluate} or a step came to, and measures by it the steps that
   * follow.
   */
  boolean balanced() {
    boolean holds = balance.holds();
    for (int r = 2 * equations.innerPoints(); r < residual.length; r++) {
      holds &= Math.abs(residual[r]) <= Balance.TOLERANCE;
    }
    return holds;
  }

  /**
   * One step from the state that {@link #balanced()} judged.
   *
   * @param seconds length of the step in pseudo-time; infinite for Newton
   * @return false when no step improves the state, which is then as it was
   */
  boolean step(double seconds) {
    clocks.start(seconds);
    return go(seconds < Double.POSITIVE_INFINITY);
  }

  /** One step, in pseudo-time or Newton's. */
  private boolean go(boolean inTime) {
    weigh();
    double before = merit();
    if (!direction(inTime)) {
      equations.residual(residual);
      return false;
    }
    iterations++;
    save();
    return inTime ? moveInTime(before) : search(before);
  }

  /** Shortens the step while that pays: a whole step may land just as far on the other side. */
  private boolean search(double before) {
    double length = limit();
    double best = Double.POSITIVE_INFINITY;
    for (int halving = 0; halving <= patience; halving++) {
      double after = tryOut(length);
      if (after <= GOOD * before || after <= noise || nearer(length)) {
        return true;
      }
      if (after >= best) {
        tryOut(2 * length);
        return true;
      }
      if (after <= (1 - SUFFICIENT * length) * before) {
        best = after;
      }
      length /= 2;
    }
    if (best < Double.POSITIVE_INFINITY) {
      return true;
    }
    tryOut(0);
    return false;
  }

  /** Whether the step that would follow is shorter; only asked near by, and of all rows. */
  private boolean nearer(double length) {
    return near && rows == Rows.ALL && nearness.gained(all, residual, step, length);
  }

  /**
   * A step in pseudo-time may pass through worse states, as filling a duct does; only nonsense is
   * refused.
   */
  private boolean moveInTime(double before) {
    if (tryOut(limit()) < WORSE * before) {
      return true;
    }
    tryOut(0);
    return false;
  }

  /** Merit at a share of the step. */
  private double tryOut(double length) {
    move(length);
    evaluate();
    return merit();
  }

  /**
   * Weights that make a residual of 1 what a balance may just leave over, so that rounding weighs
   * nothing where a large port stands before a dead end. As long as air is badly out of balance
   * somewhere, every point is measured by that largest imbalance: measured by its own flow, a point
   * that is wrong would look just as wrong however far it still has to go.
   */
  private void weigh() {
    int inner = equations.innerPoints();
    double largest = 0;
    for (int i = 0; i < inner; i++) {
      largest = Math.max(largest, Math.abs(residual[2 * i]));
    }
    double common = Balance.TOLERANCE * largest;
    GasState[] gas = equations.evaluation().gas;
    for (int i = 0; i < inner; i++) {
      double heat = common * gas[i].cp * gas[i].t;
      weight[2 * i] = held(2 * i) ? 0 : 1 / (balance.massAllowance(i) + common);
      weight[2 * i + 1] = held(2 * i + 1) ? 0 : 1 / (balance.energyAllowance(i) + heat);
    }
    for (int r = 2 * inner; r < weight.length; r++) {
      weight[r] = held(r) ? 0 : 1 / Balance.TOLERANCE;
    }
  }

  /** Whether a row is left out for the moment and its variable held. */
  private boolean held(int row) {
    boolean heat = row < 2 * equations.innerPoints() && row % 2 == 1;
    return rows == Rows.AIR ? heat : rows == Rows.HEAT && !heat;
  }

  /** Puts a one on the diagonal of each row that is left out, and nothing beside it. */
  private void hold() {
    SparsePattern pattern = equations.pattern();
    for (int r = 0; r < residual.length; r++) {
      if (held(r)) {
        Arrays.fill(values, pattern.start(r), pattern.start(r + 1), 0);
        values[pattern.slot(r, r)] = 1;
        residual[r] = 0;
      }
    }
  }

  private double merit() {
    double sum = 0;
    for (int r = 0; r < residual.length; r++) {
      double scaled = residual[r] * weight[r];
      sum += scaled * scaled;
    }
    return sum;
  }

  private boolean direction(boolean inTime) {
    equations.jacobian(values);
    if (inTime) {
      addStorage();
    }
    if (rows != Rows.ALL) {
      hold();
    }
    return factor() && solve();
  }

  /** Solves for the step that takes the residual away. */
  private boolean solve() {
    for (int r = 0; r < residual.length; r++) {
      residual[r] = -residual[r];
    }
    factors().solveUnrefined(residual, step);
    for (double s : step) {
      if (!Double.isFinite(s)) {
        return false;
      }
    }
    return true;
  }

  private boolean factor() {
    SparseLu lu = factors();
    return lu.refactor(values) || lu.order(values);
  }

  /** Each kind of step has factors of its own: a row that is held suits other pivots. */
  private SparseLu factors() {
    return switch (rows) {
      case ALL -> all;
      case AIR -> air;
      case HEAT -> heat;
    };
  }

  /** Subtracts what each point stores in its step: V/(R T) dp for mass, m cp dT for heat. */
  private void addStorage() {
    Evaluation e = equations.evaluation();
    for (int i = 0; i < equations.innerPoints(); i++) {
      double volume = Math.max(LEAST_VOLUME, equations.network().points().get(i).volume());
      double held = volume * e.gas[i].p / (Air.R * e.gas[i].t);
      storage[2 * i] = held;
      storage[2 * i + 1] = held * e.gas[i].cp;
      for (int r = 2 * i; r <= 2 * i + 1; r++) {
        values[equations.pattern().slot(r, r)] -= storage[r] / clocks.of(i);
      }
    }
  }

  /**
   * Share of the step that keeps pressures and temperatures within reach of their present values. A
   * sensed pressure is what flow makes of a pressure and needs no limit of its own.
   */
  private double limit() {
    double share = 1;
    for (int c = 0; c < 2 * equations.innerPoints(); c++) {
      double largest = c % 2 == 1 ? LARGEST_T_SHARE * temperature(c) : LARGEST_LN_P;
      if (Math.abs(step[c]) > largest * (1 / share)) {
        share = largest / Math.abs(step[c]);
      }
    }
    return share;
  }

  private double temperature(int column) {
    return equations.evaluation().variables[equations.variableOf(column)];
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
    for (int i = 0; i < equations.innerPoints(); i++) {
      largest = Math.max(largest, moved(i));
    }
    return largest;
  }

  /** How far the last step took a point, as a share of the largest pressure or temperature step. */
  private double moved(int point) {
    double[] x = equations.evaluation().variables;
    int p = 2 * point;
    double pressure = Math.abs(x[equations.variableOf(p)] - from[p]) / LARGEST_LN_P;
    double heat = Math.abs(x[equations.variableOf(p + 1)] - from[p + 1]) / LARGEST_T;
    return Math.max(pressure, heat);
  }
}
