package dev.offtake.solve;

import dev.offtake.network.Balance;
import dev.offtake.network.Carry;
import dev.offtake.network.Equations;
import dev.offtake.part.Conditions;
import java.util.Arrays;

/**
 * Finds the steady state of a network for given conditions and controls, by the ladder that the
 * package describes.
 *
 * <p>Belongs to one set of equations and one thread; remembers the last state, so that a small
 * change is a short way.
 */
public final class SteadySolver {
  /** How the state was reached. */
  public enum Way {
    /** Newton from the last state. */
    WARM,
    /** From the last state in smaller changes. */
    BRIDGE,
    /** Newton from the linear network. */
    COLD,
    /** Sources brought up from nothing. */
    RISE,
    /** Pseudo-transient continuation. */
    PSEUDO_TIME,
    /** From a state at another speed, in smaller changes. */
    NEIGHBOUR,
    /** Not as a steady state: it is an instant while time passes. */
    IN_TIME,
    /** Not at all. */
    NOT_SOLVED
  }

  private static final int NEWTON_LIMIT = 40;

  /** Shares of the speeds at which a neighbour is looked for, slower ones first. */
  private static final double[] NEIGHBOURS = {0.99, 0.97, 1.01, 1.03, 0.95, 1.05, 0.9, 0.85, 0.8};

  /** How many of them are asked before sources are brought up, which takes longer. */
  private static final int CLOSE = 4;

  private static final int WARM_LIMIT = 12;
  private static final int PSEUDO_LIMIT = 250;

  /** Steps within which pseudo-time leads somewhere, if it is the way at all. */
  private static final int FILL_LIMIT = 70;

  private static final double FIRST_SECONDS = 1e-4;
  private static final double LEAST_SECONDS = 1e-9;

  private final Equations equations;
  private final Balance balance;
  private final Newton newton;
  private final LinearStart start;
  private final Rise rise;
  private final Bridge bridge;
  private final Carry carry;
  private final double[] kept;
  private final double[] last;
  private final double[] change;
  private boolean follows = true;
  private boolean nearby;
  private boolean warm;
  private boolean moved;

  /** Prepares to solve the given equations. */
  public SteadySolver(Equations equations) {
    this.equations = equations;
    balance = new Balance(equations);
    newton = new Newton(equations, balance);
    start = new LinearStart(equations);
    March march = new March(equations, newton);
    rise = new Rise(equations, newton, march);
    bridge = new Bridge(equations, march);
    carry = new Carry(equations);
    kept = equations.evaluation().variables.clone();
    last = kept.clone();
    change = kept.clone();
  }

  /** The equations. */
  public Equations equations() {
    return equations;
  }

  /** The judge of the last answer. */
  public Balance balance() {
    return balance;
  }

  /** Newton steps of the last answer. */
  public int iterations() {
    return newton.iterations();
  }

  /** Forgets the last state, so that the next answer starts from the linear network. */
  public void forget() {
    warm = false;
  }

  /**
   * Solves for the conditions and controls that the equations hold.
   *
   * @return how; the equations hold the state, evaluated
   */
  public Way solve() {
    newton.resetIterations();
    equations.refreshBoundary();
    Way way = climb();
    if (way == Way.NOT_SOLVED) {
      warm = false;
    } else {
      keep();
    }
    return way;
  }

  /**
   * Solves as {@link #solve()} does, but tries a guess first.
   *
   * @param guess values of the variables; only those of the columns are looked at
   * @return how; the equations hold the state, evaluated
   */
  Way solve(double[] guess) {
    double[] x = equations.evaluation().variables;
    newton.resetIterations();
    equations.refreshBoundary();
    for (int c = 0; c < equations.size(); c++) {
      x[equations.variableOf(c)] = guess[equations.variableOf(c)];
    }
    if (newton.runOn(WARM_LIMIT)) {
      keep();
      return Way.WARM;
    }
    comeBack();
    return solve();
  }

  /** Puts the columns' variables back to the last state. */
  private void comeBack() {
    double[] x = equations.evaluation().variables;
    for (int c = 0; c < equations.size(); c++) {
      x[equations.variableOf(c)] = last[equations.variableOf(c)];
    }
  }

  private void keep() {
    warm = true;
    double[] x = equations.evaluation().variables;
    System.arraycopy(x, 0, last, 0, last.length);
    bridge.remember();
  }

  private Way climb() {
    if (warm && (fromLast() || plain() || sorted())) {
      return Way.WARM;
    }
    if (warm && bridge.possible()) {
      comeBack();
      if (bridge.run()) {
        return Way.BRIDGE;
      }
    }
    if (warm && nearby) {
      return Way.NOT_SOLVED;
    }
    return warm && settled() ? Way.PSEUDO_TIME : fromNothing();
  }

  /** From the last state, as air moves on from it. */
  private boolean settled() {
    comeBack();
    return pseudoTime(FILL_LIMIT);
  }

  /**
   * Bringing the sources up comes before filling: where a network has two states, the one that is
   * met on the way up is the answer. Where that way ends, shorter ones are tried before it is begun
   * elsewhere.
   */
  private Way fromNothing() {
    Way way = risen(0, 1);
    if (way != Way.NOT_SOLVED) {
      return way;
    }
    if (fromNeighbour(CLOSE, false)) {
      return Way.NEIGHBOUR;
    }
    if (rise.run(1, Rise.WAYS)) {
      return Way.RISE;
    }
    start.write();
    if (pseudoTime(PSEUDO_LIMIT)) {
      return Way.PSEUDO_TIME;
    }
    return fromNeighbour(NEIGHBOURS.length, true) ? Way.NEIGHBOUR : Way.NOT_SOLVED;
  }

  /** From the linear network, else with sources brought up, else filled in pseudo-time. */
  private Way risen(int from, int to) {
    start.write();
    newton.sort(Newton.FAR);
    if (newton.run(NEWTON_LIMIT)) {
      return Way.COLD;
    }
    if (to > from && rise.run(from, to)) {
      return Way.RISE;
    }
    start.write();
    if (pseudoTime(FILL_LIMIT)) {
      return Way.PSEUDO_TIME;
    }
    rise.still(0);
    return pseudoTime(FILL_LIMIT) ? Way.PSEUDO_TIME : Way.NOT_SOLVED;
  }

  /**
   * From a state that was found at another speed, in smaller changes.
   *
   * @param most number of speeds to look at
   * @param patient whether sources are brought up there where nothing else helps
   */
  private boolean fromNeighbour(int most, boolean patient) {
    Conditions asked = equations.evaluation().conditions;
    for (int i = 0; i < most; i++) {
      at(asked.withSpeeds(asked.core() * NEIGHBOURS[i], asked.fan() * NEIGHBOURS[i]));
      if (risen(0, patient ? Rise.WAYS : 0) != Way.NOT_SOLVED) {
        bridge.remember();
        at(asked);
        if (bridge.run()) {
          return true;
        }
      }
    }
    at(asked);
    return false;
  }

  private void at(Conditions conditions) {
    equations.setConditions(conditions);
    equations.refreshBoundary();
  }

  /** Newton from the last state, which follows what changed outside or is carried along. */
  private boolean fromLast() {
    moved = changed();
    if (moved) {
      if (follows) {
        newton.follow(change);
      } else {
        carry.run(change);
      }
    }
    return newton.runOn(WARM_LIMIT);
  }

  /** Notes what changed outside since the last state. */
  private boolean changed() {
    double[] x = equations.evaluation().variables;
    boolean changed = false;
    for (int v = 0; v < x.length; v++) {
      change[v] = x[v] - last[v];
      changed |= change[v] != 0;
    }
    return changed;
  }

  /** Newton from the last state itself: at a bend of the way the tangent leads astray. */
  private boolean plain() {
    if (!follows || !moved) {
      return false;
    }
    comeBack();
    carry.run(change);
    return newton.runOn(WARM_LIMIT);
  }

  /** Newton from the last state, after it has been settled which way air moves. */
  private boolean sorted() {
    comeBack();
    newton.sort(Newton.NEAR);
    return newton.runOn(NEWTON_LIMIT);
  }

  /**
   * Whether a warm start follows what changed outside to first order (the usual way) or begins at
   * the last state itself, in which only what is all but still goes along with its source.
   */
  public void follow(boolean whether) {
    follows = whether;
  }

  /**
   * Whether an answer is only looked for near the last state: of many that are wanted one that is
   * hard to come to may be worth less than the time it takes. Where there is no last state, all
   * ways are tried.
   */
  void nearby(boolean only) {
    nearby = only;
  }

  /** Fills the network in pseudo-time with steps that grow as the residual falls. */
  private boolean pseudoTime(int limit) {
    double seconds = FIRST_SECONDS;
    newton.evaluate();
    for (int i = 0; i < limit; i++) {
      if (newton.balanced()) {
        return true;
      }
      if (!newton.step(seconds)) {
        seconds /= 8;
        if (seconds < LEAST_SECONDS) {
          return false;
        }
        continue;
      }
      double move = newton.largestMove();
      seconds *= move > 0.5 ? 0.5 : move > 0.2 ? 1.2 : 2.5;
      if (seconds > 1 && i % 5 == 0 && shortcut()) {
        return true;
      }
    }
    return newton.runOn(NEWTON_LIMIT);
  }

  /** Tries Newton from here; comes back when it leads nowhere. */
  private boolean shortcut() {
    double[] x = equations.evaluation().variables;
    System.arraycopy(x, 0, kept, 0, x.length);
    if (newton.runOn(NEWTON_LIMIT / 2)) {
      return true;
    }
    System.arraycopy(kept, 0, x, 0, x.length);
    newton.evaluate();
    return false;
  }

  /**
   * Takes a state as the last one, so that the next answer starts there.
   *
   * @param variables as many as the equations have, all finite; those of the boundary are not used
   * @throws IllegalArgumentException when they are not
   */
  public void recall(double[] variables) {
    double[] x = equations.evaluation().variables;
    if (variables.length != x.length || !Arrays.stream(variables).allMatch(Double::isFinite)) {
      throw new IllegalArgumentException(
          "a state of %d finite variables is wanted".formatted(x.length));
    }
    for (int c = 0; c < equations.size(); c++) {
      x[equations.variableOf(c)] = variables[equations.variableOf(c)];
    }
    equations.refreshBoundary();
    equations.evaluate();
    keep();
  }
}
