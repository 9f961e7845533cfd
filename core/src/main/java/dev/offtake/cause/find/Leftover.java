package dev.offtake.cause.find;

import dev.offtake.cause.chance.LinearModel;

/**
 * Estimates the error of a model from what readings leave unexplained.
 *
 * <p>With readings y = Gθ + ε, ε ~ N(0, D), d_i = v_i + s²·c_i², the most probable s of the
 * readings alone makes Σ e_i²/d_i equal to the degrees of freedom that matching leaves, Σ
 * (D·S⁻¹)_ii = m − Σ(1 − variance of θ that is left); e is what is left at the most probable θ
 * (MacKay, Bayesian Interpolation, Neural Computation 4, 1992: the noise level of the evidence
 * framework). As both sides depend on s it is found by going round.
 */
final class Leftover {
  /** Smallest model error, share of a pressure: an assumption. */
  static final double LEAST_PRESSURE = 0.005;

  /** Smallest model error of a temperature, K (1 °F): an assumption. */
  static final double LEAST_TEMPERATURE = 1 / 1.8;

  private static final int ROUNDS = 400;
  private static final double RESTS = 1e-5;

  private final double[][] slopes;
  private final double[] residual;
  private final double[] own;

  /**
   * Prepares.
   *
   * @param slopes G
   * @param residual y − f + Gθ
   * @param own v, variance of each reading without the model's
   */
  Leftover(double[][] slopes, double[] residual, double[] own) {
    this.slopes = slopes;
    this.residual = residual;
    this.own = own;
  }

  /**
   * A group of readings with one error of the model.
   *
   * @param counted c of each reading, 0 for one that does not belong to it
   * @param start s to begin with
   * @param least s below which no estimate goes
   */
  record Group(double[] counted, double start, double least) {
    /**
     * A group whose estimate never goes below what its own gauges cannot tell.
     *
     * @param own v of each reading
     */
    static Group of(double[] counted, double start, double least, double[] own) {
      double sum = 0;
      int count = 0;
      for (int i = 0; i < counted.length; i++) {
        if (counted[i] > 0) {
          sum += own[i] / (counted[i] * counted[i]);
          count++;
        }
      }
      double gauges = count == 0 ? 0 : Math.sqrt(sum / count);
      return new Group(counted, start, Math.max(least, gauges));
    }

    int readings() {
      int count = 0;
      for (double each : counted) {
        count += each > 0 ? 1 : 0;
      }
      return count;
    }
  }

  /**
   * An estimate.
   *
   * @param error s
   * @param freedom degrees of freedom that matching left to the group
   */
  record Estimate(double error, double freedom) {}

  /**
   * Estimates the errors of some groups at once.
   *
   * @param groups no reading in two of them; one in none counts with its own variance alone
   */
  Estimate[] of(Group... groups) {
    double[] error = new double[groups.length];
    double[] freedom = new double[groups.length];
    for (int g = 0; g < groups.length; g++) {
      error[g] = groups[g].start();
    }
    double moved = Double.POSITIVE_INFINITY;
    for (int round = 0; round < ROUNDS && moved > RESTS; round++) {
      double[] variance = variance(groups, error);
      double[] inverse = new double[variance.length];
      double[] left = left(variance, inverse);
      moved = 0;
      for (int g = 0; g < groups.length; g++) {
        freedom[g] = freedom(groups[g], variance, inverse);
        if (freedom[g] >= Match.ErrorLeft.FEWEST) {
          double next = Math.max(groups[g].least(), solve(groups[g], left, freedom[g]));
          moved = Math.max(moved, Math.abs(next / error[g] - 1));
          error[g] = next;
        }
      }
    }
    Estimate[] estimates = new Estimate[groups.length];
    for (int g = 0; g < groups.length; g++) {
      estimates[g] = new Estimate(error[g], freedom[g]);
    }
    return estimates;
  }

  private double[] variance(Group[] groups, double[] error) {
    double[] variance = own.clone();
    for (int i = 0; i < variance.length; i++) {
      for (int g = 0; g < groups.length; g++) {
        double model = error[g] * groups[g].counted()[i];
        variance[i] += model * model;
      }
      variance[i] = Math.max(variance[i], Double.MIN_NORMAL);
    }
    return variance;
  }

  /** e = D·S⁻¹·r, and the diagonal of S⁻¹. */
  private double[] left(double[] variance, double[] inverse) {
    LinearModel model = new LinearModel(slopes, variance);
    double[] left = new double[variance.length];
    for (int i = 0; i < left.length; i++) {
      LinearModel.Normal against = model.against(residual, i);
      inverse[i] = 1 / against.variance();
      left[i] = variance[i] * against.deviation() * inverse[i];
    }
    return left;
  }

  private static double freedom(Group group, double[] variance, double[] inverse) {
    double freedom = 0;
    for (int i = 0; i < variance.length; i++) {
      freedom += group.counted()[i] > 0 ? variance[i] * inverse[i] : 0;
    }
    return freedom;
  }

  /** The s for which Σ e²/(v + s²c²) is the freedom; 0 when no s makes it as large. */
  private double solve(Group group, double[] left, double freedom) {
    double low = 0;
    double high = group.start();
    while (sum(group, left, high) > freedom) {
      high *= 2;
    }
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      if (sum(group, left, middle) > freedom) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high;
  }

  private double sum(Group group, double[] left, double error) {
    double sum = 0;
    for (int i = 0; i < left.length; i++) {
      double c = group.counted()[i];
      if (c > 0) {
        sum += left[i] * left[i] / (own[i] + error * error * c * c);
      }
    }
    return sum;
  }
}
