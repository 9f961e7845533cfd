package dev.offtake.stability;

import java.util.List;

/**
 * Small motions about a steady state: the rate of each state is its row times all states.
 *
 * @param rates 1/s, row by row
 * @param states what each row and column is
 */
record Motion(double[][] rates, List<State> states) {
  /** Keeps its list. */
  Motion {
    states = List.copyOf(states);
  }

  /** What a state belongs to. */
  enum What {
    /** ln p of a point. */
    PRESSURE,
    /** ln T of a point. */
    TEMPERATURE,
    /** A lag of a valve. */
    VALVE
  }

  /**
   * A state.
   *
   * @param owner point or valve
   * @param what of it
   */
  record State(String owner, What what) {}

  /** Whether all rates are finite. */
  boolean finite() {
    for (double[] row : rates) {
      for (double rate : row) {
        if (!Double.isFinite(rate)) {
          return false;
        }
      }
    }
    return true;
  }
}
