package dev.offtake.cause.find;

import dev.offtake.cause.chance.Gauss;

/**
 * What an instrument would show under one suspect: a few normal values, each with its weight.
 *
 * @param means SI; chances of being lit for a light
 * @param weights sum to one
 * @param deviation of each, SI; 0 for a light
 */
record Showing(double[] means, double[] weights, double deviation) {
  double mean() {
    double sum = 0;
    for (int i = 0; i < means.length; i++) {
      sum += weights[i] * means[i];
    }
    return sum;
  }

  /** Chance of a value between two. */
  double between(double from, double to) {
    double sum = 0;
    for (int i = 0; i < means.length; i++) {
      double high = Gauss.below((to - means[i]) / deviation);
      sum += weights[i] * (high - Gauss.below((from - means[i]) / deviation));
    }
    return Math.max(0, sum);
  }

  /** The same with half of it as another one. */
  Showing or(Showing other) {
    double[] all = new double[means.length + other.means.length];
    double[] shares = new double[all.length];
    for (int i = 0; i < all.length; i++) {
      boolean own = i < means.length;
      all[i] = own ? means[i] : other.means[i - means.length];
      shares[i] = (own ? weights[i] : other.weights[i - means.length]) / 2;
    }
    return new Showing(all, shares, Math.max(deviation, other.deviation));
  }
}
