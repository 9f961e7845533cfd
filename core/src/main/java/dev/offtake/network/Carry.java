package dev.offtake.network;

import dev.offtake.part.Branch;
import java.util.Arrays;

/**
 * Moves places whose air is all but still along with the outside they are joined to.
 *
 * <p>Behind a port in which next to nothing flows, a pressure follows the one before the port. Left
 * where it was while a source moves, it would have a flow through the port that has nothing to do
 * with the one to come, and at a slope of the law that tells nothing of the way back: whole steps
 * of Newton's then land just as far on the other side.
 *
 * <p>Belongs to one set of equations; allocates nothing after it is made.
 */
public final class Carry {
  /** Difference of ln p across a stream, as a multiple of what the outside moved, that is small. */
  private static final double SMALL = 100;

  private final Equations equations;
  private final Branch[] branches;
  private final SenseRow[] senses;
  private final double[] moved;
  private final boolean[] known;

  /** Prepares for the given equations. */
  public Carry(Equations equations) {
    this.equations = equations;
    branches = equations.allBranches();
    senses = equations.senses();
    moved = new double[equations.evaluation().gas.length];
    known = new boolean[moved.length];
  }

  /**
   * Moves them.
   *
   * @param change of each variable of the boundary since the state that the other variables hold
   */
  public void run(double[] change) {
    int inner = equations.innerPoints();
    Arrays.fill(known, 0, inner, false);
    Arrays.fill(moved, 0, inner, 0);
    double largest = 0;
    for (int i = inner; i < known.length; i++) {
      known[i] = true;
      moved[i] = change[equations.lnP(i)];
      largest = Math.max(largest, Math.abs(moved[i]));
    }
    if (largest == 0) {
      return;
    }
    boolean more = true;
    while (more) {
      more = false;
      for (Branch branch : branches) {
        if (known[branch.from] != known[branch.to] && still(branch, change)) {
          int reached = known[branch.from] ? branch.to : branch.from;
          moved[reached] = moved[known[branch.from] ? branch.from : branch.to];
          known[reached] = true;
          more = true;
        }
      }
    }
    double[] x = equations.evaluation().variables;
    for (int i = 0; i < inner; i++) {
      x[equations.lnP(i)] += moved[i];
    }
    for (SenseRow sense : senses) {
      x[sense.variable()] += moved[sense.point()];
    }
  }

  /** Whether so little air passed that the end that is not known yet goes with the other. */
  private boolean still(Branch branch, double[] change) {
    double before = before(branch.to, change) - before(branch.from, change);
    double by = moved[known[branch.from] ? branch.from : branch.to];
    return Math.abs(before) < SMALL * Math.abs(by);
  }

  /** ln p of a point before the outside moved. */
  private double before(int point, double[] change) {
    int lnP = equations.lnP(point);
    double now = equations.evaluation().variables[lnP];
    return point < equations.innerPoints() ? now : now - change[lnP];
  }
}
