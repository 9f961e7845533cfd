package dev.offtake.solve;

import dev.offtake.network.Equations;

/**
 * Lets the air in slowly: from sources that hardly push, where every law is nearly a straight line
 * and nothing has moved yet, up to their full pressure.
 *
 * <p>This is also how the trade means "approached from shut, power rising": where a network has two
 * states, the one that is met on the way up is found.
 */
final class Rise {
  /** Shares of the pressures to begin with: the next is tried where the one before will not do. */
  private static final double[] FIRST = {1e-4, 1e-6, 1e-2};

  /** Number of ways up, one for each share to begin with. */
  static final int WAYS = FIRST.length;

  private static final double LARGEST_STRIDE = Math.log(10);
  private static final int NEWTON_LIMIT = 20;
  private static final int MOST_STEPS = 250;

  private final Equations equations;
  private final Newton newton;
  private final March march;

  Rise(Equations equations, Newton newton, March march) {
    this.equations = equations;
    this.newton = newton;
    this.march = march;
  }

  /**
   * Goes all the way.
   *
   * @param from number of the first way to try
   * @param to number after the last
   * @return whether the state at full pressure balances; the sources give their full pressure again
   *     in either case
   */
  boolean run(int from, int to) {
    boolean found = false;
    for (int i = from; i < to && !found; i++) {
      double lnShare = Math.log(FIRST[i]);
      found = begin(lnShare) && march.run(this::at, lnShare, 0, LARGEST_STRIDE, MOST_STEPS);
    }
    at(0);
    return found;
  }

  private boolean begin(double lnShare) {
    still(lnShare);
    if (newton.run(NEWTON_LIMIT)) {
      return true;
    }
    still(lnShare);
    return newton.sort(Newton.FAR) && newton.run(NEWTON_LIMIT);
  }

  /**
   * Everything at the pressure and temperature of the air outside, with sources at a share of their
   * pressure.
   */
  void still(double lnShare) {
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
