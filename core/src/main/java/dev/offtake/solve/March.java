package dev.offtake.solve;

import dev.offtake.network.Equations;

/**
 * Goes from a state that balances to another place of a way, in steps that follow the tangent and
 * grow and shrink with what Newton makes of them.
 */
final class March {
  /** Something that changes with one number. */
  interface Path {
    /** Puts conditions and parameters where they are at a place, and refreshes the boundary. */
    void at(double place);
  }

  private static final int NEWTON_LIMIT = 10;
  private static final int EASY = 3;
  private static final int HARD = 6;

  /** Smallest step, as a share of the first. */
  private static final double SMALLEST = 1e-4;

  /**
   * Of so many steps that fail in a row, each a third of the one before, the first is also tried
   * with air and heat sorted out anew: that is how a way crosses a bend, but it costs five times
   * what the tangent does.
   */
  private static final int SORTED_OF = 3;

  private final Equations equations;
  private final Newton newton;
  private final double[] last;
  private final double[] change;

  March(Equations equations, Newton newton) {
    this.equations = equations;
    this.newton = newton;
    last = equations.evaluation().variables.clone();
    change = last.clone();
  }

  /**
   * Goes all the way. The equations hold the state at the beginning, evaluated.
   *
   * @param path the way
   * @param from where it begins
   * @param to where it ends, above {@code from}
   * @param largest longest step, which is also the first
   * @param most number of steps after which to give up
   * @return whether the state at the end balances; the path stands at the end in either case
   */
  boolean run(Path path, double from, double to, double largest, int most) {
    double[] x = equations.evaluation().variables;
    double place = from;
    double stride = largest;
    int failed = 0;
    for (int i = 0; i < most && place < to && stride > SMALLEST * largest; i++) {
      double next = Math.min(to, place + stride);
      System.arraycopy(x, 0, last, 0, last.length);
      int before = newton.iterations();
      if (follow(path, next) || (failed % SORTED_OF == 0 && sort(path, next))) {
        place = next;
        failed = 0;
        int steps = newton.iterations() - before;
        stride = Math.min(largest, stride * (steps <= EASY ? 1.7 : steps <= HARD ? 1.2 : 0.7));
      } else {
        failed++;
        comeBack(path, place);
        stride = (next - place) / 3;
      }
    }
    if (place < to) {
      path.at(to);
    }
    return place == to;
  }

  /** On the tangent. */
  private boolean follow(Path path, double place) {
    path.at(place);
    double[] x = equations.evaluation().variables;
    for (int v = 0; v < x.length; v++) {
      change[v] = x[v] - last[v];
    }
    return newton.follow(change) && newton.runAlong(NEWTON_LIMIT);
  }

  /** From the last state itself, after it has been settled which way air moves. */
  private boolean sort(Path path, double place) {
    comeBack(path, place);
    return newton.sort(Newton.NEAR) && newton.runAlong(NEWTON_LIMIT);
  }

  /** The last state, evaluated at a place. */
  private void comeBack(Path path, double place) {
    System.arraycopy(last, 0, equations.evaluation().variables, 0, last.length);
    path.at(place);
    equations.evaluate();
  }
}
