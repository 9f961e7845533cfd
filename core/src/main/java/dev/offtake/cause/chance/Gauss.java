package dev.offtake.cause.chance;

import java.util.function.DoubleUnaryOperator;

/** The normal distribution. */
public final class Gauss {
  /**
   * Nodes and weights of the Gauss–Hermite rule of seven points for the standard normal density
   * (Abramowitz and Stegun, Handbook of Mathematical Functions, 1964, table 25.10, nodes times √2,
   * weights by √π).
   */
  private static final double[] NODES = {
    -3.750439717725742,
    -2.366759410734541,
    -1.154405394739968,
    0,
    1.154405394739968,
    2.366759410734541,
    3.750439717725742
  };

  private static final double[] WEIGHTS = {
    5.482688559722176e-4,
    3.075712396758652e-2,
    2.401231786050127e-1,
    4.571428571428572e-1,
    2.401231786050127e-1,
    3.075712396758652e-2,
    5.482688559722176e-4
  };

  private Gauss() {}

  /**
   * Share of a standard normal value below x, within 1e-7 (Abramowitz and Stegun, 26.2.17).
   *
   * @param x in standard deviations
   */
  public static double below(double x) {
    double t = 1 / (1 + 0.2316419 * Math.abs(x));
    double poly =
        t
            * (0.319381530
                + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
    double tail = Math.exp(-0.5 * x * x) / Math.sqrt(2 * Math.PI) * poly;
    return x > 0 ? 1 - tail : tail;
  }

  /** Mean of a function of a normal value. */
  public static double mean(DoubleUnaryOperator of, double mean, double deviation) {
    if (!(deviation > 0)) {
      return of.applyAsDouble(mean);
    }
    double sum = 0;
    for (int i = 0; i < NODES.length; i++) {
      sum += WEIGHTS[i] * of.applyAsDouble(mean + deviation * NODES[i]);
    }
    return sum;
  }
}
