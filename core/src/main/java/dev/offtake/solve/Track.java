package dev.offtake.solve;

/**
 * Follows the steady state along one quantity and guesses each answer from those before it: on a
 * parabola through three, where the last three were met without trouble, else along the tangent.
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

  private final SteadySolver solver;
  private final double[][] states;
  private final double[] places = new double[3];
  private final double[] guess;
  private int known;

  /** Prepares to follow. */
  public Track(SteadySolver solver) {
    this.solver = solver;
    int variables = solver.equations().evaluation().variables.length;
    states = new double[3][variables];
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
    if (known < 3) {
      return false;
    }
    double a = places[0];
    double b = places[1];
    double c = places[2];
    double reach = Math.abs(place - c);
    if (a == b || b == c || a == c || !(reach <= FARTHEST * Math.abs(c - a))) {
      return false;
    }
    double la = (place - b) * (place - c) / ((a - b) * (a - c));
    double lb = (place - a) * (place - c) / ((b - a) * (b - c));
    double lc = (place - a) * (place - b) / ((c - a) * (c - b));
    for (int v = 0; v < guess.length; v++) {
      guess[v] = la * states[0][v] + lb * states[1][v] + lc * states[2][v];
    }
    return true;
  }

  private void keep(double place) {
    if (known == 3) {
      double[] oldest = states[0];
      states[0] = states[1];
      states[1] = states[2];
      states[2] = oldest;
      places[0] = places[1];
      places[1] = places[2];
      known = 2;
    }
    double[] x = solver.equations().evaluation().variables;
    System.arraycopy(x, 0, states[known], 0, x.length);
    places[known++] = place;
  }
}
