package dev.offtake.time;

import java.util.Arrays;

/**
 * Counts how often each position turns round, and tells which turns too often to be followed: more
 * than fifty times a second over half a second.
 */
final class Swings {
  private static final double MOST = 50;
  private static final double WINDOW = 0.5;
  private static final int COUNTED = (int) (MOST * WINDOW);

  /** A swing of less than this share of the stroke is none. */
  private static final double LEAST = 0.01;

  private final double[] extreme;
  private final boolean[] rising;
  private final double[][] turns;
  private final int[] next;

  Swings(int lags) {
    extreme = new double[lags];
    rising = new boolean[lags];
    turns = new double[lags][COUNTED];
    next = new int[lags];
    for (double[] each : turns) {
      Arrays.fill(each, Double.NEGATIVE_INFINITY);
    }
  }

  /**
   * Looks at a position.
   *
   * @param lag number of the lag
   * @param time s
   * @param value of the position
   * @return frequency with which it swings where that is too fast, Hz; else 0
   */
  double look(int lag, double time, double value) {
    double gone = rising[lag] ? extreme[lag] - value : value - extreme[lag];
    if (gone < 0) {
      extreme[lag] = value;
      return 0;
    }
    if (gone < LEAST) {
      return 0;
    }
    rising[lag] = !rising[lag];
    extreme[lag] = value;
    double first = turns[lag][next[lag]];
    turns[lag][next[lag]] = time;
    next[lag] = (next[lag] + 1) % COUNTED;
    return time - first < WINDOW ? COUNTED / (2 * (time - first)) : 0;
  }
}
