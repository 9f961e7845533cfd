package dev.offtake.cause.chance;

/** Sums of numbers that are too small or too large to be written out: kept as logarithms. */
public final class Logs {
  private Logs() {}

  /** log Σ exp x; −∞ for none. */
  public static double sum(double... logs) {
    double most = Double.NEGATIVE_INFINITY;
    for (double log : logs) {
      most = Math.max(most, log);
    }
    if (most == Double.NEGATIVE_INFINITY) {
      return most;
    }
    double sum = 0;
    for (double log : logs) {
      sum += Math.exp(log - most);
    }
    return most + Math.log(sum);
  }

  /** Shares that sum to one, in proportion to what the logarithms stand for. */
  public static double[] shares(double... logs) {
    double all = sum(logs);
    double[] shares = new double[logs.length];
    for (int i = 0; i < logs.length; i++) {
      shares[i] = Math.exp(logs[i] - all);
    }
    return shares;
  }
}
