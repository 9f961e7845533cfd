package dev.offtake.solve;

import java.util.Arrays;

/**
 * Follows the steady state along one quantity and guesses each answer from those before it: on the
 * polynomial through the last four, or three, that were met without trouble, else along the
 * tangent.
 *
 * <p>The fourth pays where a leg is nearly still behind a large port: there Newton's first step
 * from a parabola ends a few times outside of what a balance allows, and all laws are evaluated
 * once more.
 *
 * <p>A handover bends the way; the guess then misses, Newton says so by needing more steps, and the
 * memory of what lies before the bend is dropped.
 *
 * <p>Belongs to one thread and one {@link SteadySolver}, which nobody else uses meanwhile;
 * allocates nothing.
 */
public final class Track {
  /** Steps of Newton beyond which a guess counts as a miss. */
  private static final int MISSED = 2;

  /** Farthest guess, as a multiple of the stretch that is remembered. */
  private static final double FARTHEST = 2;

  /** Fewest and most states that a guess goes through. */
  private static final int FEWEST = 3;

  private static final int REMEMBERED = 4;

  private final SteadySolver solver;
  private final double[][] states;
  private final double[] places = new double[REMEMBERED];
  private final double[] share = new double[REMEMBERED];
  private final double[] guess;
  private int known;

  /** Prepares to follow. */
  public Track(SteadySolver solver) {
    this.solver = solver;
    int variables = solver.equations().evaluation().variables.length;
    states = new double[REMEMBERED][variables];
    guess = new double[variables];
  }

  /**
   * Solves at a place of the way, for the conditions and parameters that the equations hold.
   *
   * @param place where on the way, in any unit
   * @return how it was solved; the equations hold the state, evaluated
   */
  public SteadySolver.Way to(double place) {
    boolean guessed = guess(place);
    SteadySolver.Way way = guessed ? solver.solve(guess) : solver.solve();
    if (way != SteadySolver.Way.WARM || solver.iterations() > MISSED) {
      known = 0;
    }
    if (way != SteadySolver.Way.NOT_SOLVED) {
      keep(place);
    }
    return way;
  }

  private boolean guess(double place) {
    if (known < FEWEST) {
      return false;
    }
    double stretch = Math.abs(places[known - 1] - places[0]);
    if (!(Math.abs(place - places[known - 1]) <= FARTHEST * stretch) || !share(place)) {
      return false;
    }
    Arrays.fill(guess, 0);
    for (int k = 0; k < known; k++) {
      double[] state = states[k];
      double part = share[k];
      for (int v = 0; v < guess.length; v++) {
        guess[v] += part * state[v];
      }
    }
    return true;
  }

  /** Lagrange's share of each state in the guess; false when two were met at one place. */
  private boolean share(double place) {
    for (int k = 0; k < known; k++) {
      double product = 1;
      for (int j = 0; j < known; j++) {
        if (j != k) {
          product *= (place - places[j]) / (places[k] - places[j]);
        }
      }
      share[k] = product;
    }
    for (int k = 0; k < known; k++) {
      if (!Double.isFinite(share[k])) {
        return false;
      }
    }
    return true;
  }

  private void keep(double place) {
    if (known == REMEMBERED) {
      double[] oldest = states[0];
      System.arraycopy(states, 1, states, 0, REMEMBERED - 1);
      System.arraycopy(places, 1, places, 0, REMEMBERED - 1);
      states[REMEMBERED - 1] = oldest;
      known--;
    }
    double[] x = solver.equations().evaluation().variables;
    System.arraycopy(x, 0, states[known], 0, x.length);
    places[known++] = place;
  }
}
