package dev.offtake.solve;

import java.util.Arrays;

/**
 * Steps in pseudo-time, one for each point: as long as the point follows calmly, short where it
 * tosses about.
 *
 * <p>With one step for all, the point that tosses most holds back the whole network, and the more
 * points there are the surer one does: of 2,000 points two that went to and fro kept all others
 * from settling. A point that had to slow down hurries less from then on, else it would toss again.
 */
final class Clocks {
  /** Beyond this a step is Newton's, s. */
  private static final double LAST = 1e6;

  /**
   * Moves, as shares of the largest that is allowed, above which a step shrinks or hardly grows.
   */
  private static final double WILD = 0.3;

  private static final double BRISK = 0.1;
  private static final double CALM = 0.03;

  private static final double SHRINKS = 0.3;
  private static final double[] GROWS = {1.2, 3, 10};

  /** What tossed grows by this factor at least: else it would never come to an end. */
  private static final double LEAST_GROWTH = 1.3;

  private final double[] seconds;
  private final double[] most;

  Clocks(int points) {
    seconds = new double[points];
    most = new double[points];
  }

  /** All points at the same step, in seconds. */
  void start(double first) {
    Arrays.fill(seconds, first);
    Arrays.fill(most, GROWS[GROWS.length - 1]);
  }

  /** The step of a point, s. */
  double of(int point) {
    return seconds[point];
  }

  /**
   * Notes how far the last step took a point.
   *
   * @param move share of the largest that is allowed
   */
  void moved(int point, double move) {
    if (move > WILD) {
      seconds[point] *= SHRINKS;
      most[point] = Math.max(LEAST_GROWTH, Math.sqrt(most[point]));
      return;
    }
    double grows = move > BRISK ? GROWS[0] : move > CALM ? GROWS[1] : GROWS[2];
    seconds[point] *= Math.min(most[point], grows);
  }

  /** Whether every step is so long that it is Newton's. */
  boolean over() {
    for (double step : seconds) {
      if (step <= LAST) {
        return false;
      }
    }
    return true;
  }
}
