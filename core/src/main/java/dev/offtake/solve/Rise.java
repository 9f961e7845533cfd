package dev.offtake.solve;

import dev.offtake.network.Equations;
import dev.offtake.part.Evaluation;

/**
 * Lets the air in slowly: from sources that hardly push, where every law is nearly a straight line
 * and nothing has moved yet, up to their full pressure, in steps that follow the tangent and grow
 * and shrink with what Newton makes of them.
 *
 * <p>This is also how the trade means "approached from shut, power rising": where a network has two
 * states, the one that is met on the way up is found.
 */
final class Rise {
  /** Share of the pressures to begin with: all drops lie in the laws' linear range there. */
  private static final double FIRST = 1e-6;

  private static final double FIRST_STRIDE = Math.log(10);
  private static final double LARGEST_STRIDE = Math.log(10);
  private static final double SMALLEST_STRIDE = 1e-5;
  private static final int NEWTON_LIMIT = 10;
  private static final int EASY = 3;
  private static final int HARD = 6;
  private static final int MOST_STEPS = 1000;

  private final Equations equations;
  private final Newton newton;
  private final double[] last;
  private final double[] change;

  Rise(Equations equations, Newton newton) {
    this.equations = equations;
    this.newton = newton;
    last = equations.evaluation().variables.clone();
    change = last.clone();
  }

  /**
   * Goes all the way.
   *
   * @return whether the state at full pressure balances; the sources give their full pressure again
   *     in either case
   */
  boolean run() {
    Evaluation e = equations.evaluation();
    double lnShare = Math.log(FIRST);
    still(lnShare);
    boolean found = newton.run(4 * NEWTON_LIMIT);
    double stride = FIRST_STRIDE;
    for (int i = 0; i < MOST_STEPS && found && lnShare < 0; i++) {
      double next = Math.min(0, lnShare + stride);
      System.arraycopy(e.variables, 0, last, 0, last.length);
      int before = newton.iterations();
      if (reach(next)) {
        lnShare = next;
        int steps = newton.iterations() - before;
        stride =
            Math.min(LARGEST_STRIDE, stride * (steps <= EASY ? 1.7 : steps <= HARD ? 1.2 : 0.7));
      } else {
        comeBack(lnShare);
        stride = Math.min(stride, next - lnShare) / 3;
        found = stride > SMALLEST_STRIDE;
      }
    }
    at(0);
    return found && lnShare == 0;
  }

  private boolean reach(double lnShare) {
    at(lnShare);
    double[] x = equations.evaluation().variables;
    for (int v = 0; v < x.length; v++) {
      change[v] = x[v] - last[v];
    }
    if (newton.follow(change) && newton.run(NEWTON_LIMIT)) {
      return true;
    }
    comeBack(lnShare);
    return newton.sort(Newton.NEAR) && newton.run(NEWTON_LIMIT);
  }

  private void comeBack(double lnShare) {
    System.arraycopy(last, 0, equations.evaluation().variables, 0, last.length);
    at(lnShare);
    equations.evaluate();
  }

  /** Everything at the pressure and temperature of the air outside. */
  private void still(double lnShare) {
    at(lnShare);
    double[] x = equations.evaluation().variables;
    int outside = equations.lnP(equations.ambient());
    for (int i = 0; i < equations.innerPoints(); i++) {
      x[equations.lnP(i)] = x[outside];
      x[equations.lnP(i) + 1] = x[outside + 1];
    }
    for (int c = 2 * equations.innerPoints(); c < equations.size(); c++) {
      x[equations.variableOf(c)] = x[outside];
    }
  }

  private void at(double lnShare) {
    equations.evaluation().rise = Math.exp(lnShare);
    equations.refreshBoundary();
  }
}
