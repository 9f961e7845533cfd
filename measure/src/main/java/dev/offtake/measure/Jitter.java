package dev.offtake.measure;

import dev.offtake.network.Equations;
import java.util.Random;

/**
 * States around a solved one, as far from it as Newton's steps of a warm state are, so that no law
 * meets the same numbers twice running.
 */
final class Jitter {
  private static final int STATES = 16;
  private static final double SIZE = 1e-4;
  private static final double KELVIN = 300;

  private final Equations equations;
  private final double[][] states = new double[STATES][];
  private int at;

  /** Makes states around the one that the equations hold. */
  Jitter(Equations equations) {
    this.equations = equations;
    Random random = new Random(4);
    double[] x = equations.evaluation().variables;
    for (int s = 0; s < STATES; s++) {
      states[s] = x.clone();
      for (int c = 0; c < equations.size(); c++) {
        boolean temperature = c < 2 * equations.innerPoints() && c % 2 == 1;
        double by = SIZE * random.nextGaussian() * (temperature ? KELVIN : 1);
        states[s][equations.variableOf(c)] += by;
      }
    }
  }

  /** Number of states. */
  int count() {
    return STATES;
  }

  /** Writes the next state into the equations, without evaluating it. */
  void next() {
    at = (at + 1) % STATES;
    write(at);
  }

  /** Writes one of the states into the equations, without evaluating it. */
  void write(int state) {
    double[] x = equations.evaluation().variables;
    System.arraycopy(states[state], 0, x, 0, x.length);
  }
}
