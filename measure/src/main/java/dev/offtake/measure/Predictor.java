package dev.offtake.measure;

import dev.offtake.solve.SteadySolver;

/** What a warm state starts from. */
public enum Predictor {
  /** The last state as it is. */
  NONE {
    @Override
    void choose(SteadySolver solver) {
      solver.follow(false);
    }
  },
  /** The last state and its tangent. */
  TANGENT {
    @Override
    void choose(SteadySolver solver) {
      solver.follow(true);
    }
  },
  /** A parabola through three states before, where they were met without trouble. */
  PARABOLA {
    @Override
    void choose(SteadySolver solver) {
      solver.follow(true);
    }
  };

  /** Makes a solver start so. */
  abstract void choose(SteadySolver solver);
}
