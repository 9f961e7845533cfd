package dev.offtake.solve;

import dev.offtake.network.Balance;
import dev.offtake.network.Equations;
import dev.offtake.part.Conditions;
import dev.offtake.part.Evaluation;
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
    /** Newton from the linear network. */
    COLD,
    /** Pseudo-transient continuation. */
    PSEUDO_TIME,
    /** A march from low power. */
    MARCH,
    /** Not at all. */
    NOT_SOLVED
  }

  private static final int NEWTON_LIMIT = 40;
  private static final int PSEUDO_LIMIT = 250;
  private static final double LOWEST_SHARE = 0.55;
  private static final double SMALLEST_MARCH = 1.0 / 512;

  private final Equations equations;
  private final Balance balance;
  private final Newton newton;
  private final LinearStart start;
  private boolean warm;

  /** Prepares to solve the given equations. */
  public SteadySolver(Equations equations) {
    this.equations = equations;
    balance = new Balance(equations);
    newton = new Newton(equations, balance);
    start = new LinearStart(equations);
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
    warm = way != Way.NOT_SOLVED;
    return way;
  }

  private Way climb() {
    if (warm && newton.run(NEWTON_LIMIT)) {
      return Way.WARM;
    }
    start.write();
    if (newton.run(NEWTON_LIMIT)) {
      return Way.COLD;
    }
    start.write();
    if (pseudoTime()) {
      return Way.PSEUDO_TIME;
    }
    return march() ? Way.MARCH : Way.NOT_SOLVED;
  }

  /** Fills the network in pseudo-time with steps that grow as the residual falls. */
  private boolean pseudoTime() {
    double seconds = 1e-4;
    equations.evaluate();
    newton.scale();
    for (int i = 0; i < PSEUDO_LIMIT; i++) {
      if (newton.run(0)) {
        return true;
      }
      if (!newton.step(seconds)) {
        seconds /= 8;
        if (seconds < 1e-9) {
          return false;
        }
        continue;
      }
      double move = newton.largestMove();
      seconds *= move > 0.5 ? 0.5 : move > 0.2 ? 1.2 : 2.5;
      if (seconds > 1 && i % 5 == 0 && newton.run(NEWTON_LIMIT / 2)) {
        return true;
      }
    }
    return newton.run(NEWTON_LIMIT);
  }

  /** Slows the engine until a state is found, then brings it up again. */
  private boolean march() {
    Conditions target = equations.evaluation().conditions;
    double[] x = equations.evaluation().variables;
    double share = LOWEST_SHARE;
    at(target, share);
    start.write();
    if (!newton.run(NEWTON_LIMIT) && !restartInPseudoTime()) {
      equations.setConditions(target);
      return false;
    }
    double stride = 1.0 / 16;
    double[] last = x.clone();
    double[] before = x.clone();
    double lastShare = share;
    double beforeShare = share;
    while (share < 1) {
      double next = Math.min(1, share + stride);
      at(target, next);
      predict(last, lastShare, before, beforeShare, next);
      equations.refreshBoundary();
      if (newton.run(NEWTON_LIMIT / 2)) {
        System.arraycopy(last, 0, before, 0, x.length);
        System.arraycopy(x, 0, last, 0, x.length);
        beforeShare = lastShare;
        lastShare = next;
        share = next;
        stride = Math.min(1.0 / 8, stride * 1.6);
      } else {
        stride /= 3;
        if (stride < SMALLEST_MARCH) {
          equations.setConditions(target);
          System.arraycopy(last, 0, x, 0, x.length);
          equations.refreshBoundary();
          return pseudoTime();
        }
      }
    }
    return true;
  }

  private boolean restartInPseudoTime() {
    start.write();
    return pseudoTime();
  }

  private void at(Conditions target, double share) {
    equations.setConditions(target.withSpeeds(target.core() * share, target.fan() * share));
  }

  private void predict(
      double[] last, double lastShare, double[] before, double beforeShare, double next) {
    double[] x = equations.evaluation().variables;
    double reach = lastShare > beforeShare ? (next - lastShare) / (lastShare - beforeShare) : 0;
    for (int c = 0; c < equations.size(); c++) {
      int v = equations.variableOf(c);
      x[v] = last[v] + reach * (last[v] - before[v]);
    }
  }

  /** A copy of all variables, to come back to. */
  public double[] remember() {
    return equations.evaluation().variables.clone();
  }

  /** Comes back to remembered variables as the last state. */
  public void recall(double[] variables) {
    Evaluation e = equations.evaluation();
    System.arraycopy(variables, 0, e.variables, 0, Math.min(variables.length, e.variables.length));
    warm = Arrays.stream(variables).allMatch(Double::isFinite);
  }
}
