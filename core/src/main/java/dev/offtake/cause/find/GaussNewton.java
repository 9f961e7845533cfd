package dev.offtake.cause.find;

import dev.offtake.cause.chance.LinearModel;
import java.util.Optional;

/**
 * Finds the most probable unknowns of y = f(θ) + ε with θ ~ N(0, I) and ε ~ N(0, D) by Gauss–Newton
 * steps that are halved while they do not help (Nocedal and Wright, Numerical Optimization, 2006,
 * §10.3): about each θ the forecast is taken as straight, f(θ') = f + G(θ' − θ), for which {@link
 * LinearModel} knows the answer.
 */
final class GaussNewton {
  private static final int ROUNDS = 15;
  private static final int HALVINGS = 8;

  /** At rest, in standard deviations of the unknowns. */
  private static final double STILL = 1e-4;

  private GaussNewton() {}

  /** A forecast that can be made for any unknowns. */
  @FunctionalInterface
  interface Forecast {
    /** The forecast; empty where there is none. */
    Optional<Point> at(double[] theta);
  }

  /**
   * A forecast at a place.
   *
   * @param theta place
   * @param value f
   * @param slopes G, made when they are asked for
   */
  record Point(double[] theta, double[] value, java.util.function.Supplier<double[][]> slopes) {}

  /**
   * Where it came to rest.
   *
   * @param point the most probable unknowns
   * @param slopes G there
   * @param model of the readings there
   * @param residual y − f + Gθ: what the straight forecast has to explain
   * @param settled whether it came to rest
   */
  record Rest(
      Point point, double[][] slopes, LinearModel model, double[] residual, boolean settled) {
    /** What is left: y − f. */
    double[] left(double[] read) {
      double[] left = new double[read.length];
      for (int i = 0; i < left.length; i++) {
        left[i] = read[i] - point.value()[i];
      }
      return left;
    }
  }

  /**
   * Searches.
   *
   * @param start forecast at a first place
   * @param forecast elsewhere
   * @param read y
   * @param variance D
   */
  static Rest search(Point start, Forecast forecast, double[] read, double[] variance) {
    return search(start, forecast, read, variance, 0);
  }

  /**
   * Searches with a forecast that is not smooth.
   *
   * @param start forecast at a first place
   * @param forecast elsewhere
   * @param read y
   * @param variance D
   * @param rough where no step helps, it is at rest if a straight forecast promises to take away no
   *     more than this of the squares of the readings' own errors, each; 0 for a smooth forecast
   */
  static Rest search(
      Point start, Forecast forecast, double[] read, double[] variance, double rough) {
    Rest rest = rest(start, read, variance, false);
    for (int round = 0; round < ROUNDS; round++) {
      double[] step = step(rest);
      if (largest(step) < STILL) {
        return settled(rest);
      }
      Optional<Point> next = better(rest.point(), step, forecast, read, variance);
      if (next.isEmpty()) {
        // No step helps: this is as good as the forecast's own rounding lets it be.
        boolean small = largest(step) < 100 * STILL;
        return small || promises(rest, read, variance) <= rough ? settled(rest) : rest;
      }
      rest = rest(next.get(), read, variance, false);
    }
    return promises(rest, read, variance) <= rough ? settled(rest) : rest;
  }

  /** What the straight forecast promises to take away of the cost, for each reading. */
  private static double promises(Rest rest, double[] read, double[] variance) {
    double now = cost(rest.point(), read, variance);
    return (now - rest.model().misfit(rest.residual())) / Math.max(1, read.length);
  }

  private static Rest settled(Rest rest) {
    return new Rest(rest.point(), rest.slopes(), rest.model(), rest.residual(), true);
  }

  private static Rest rest(Point point, double[] read, double[] variance, boolean settled) {
    double[][] slopes = point.slopes().get();
    LinearModel model = new LinearModel(slopes, variance);
    double[] residual = new double[read.length];
    for (int i = 0; i < residual.length; i++) {
      residual[i] = read[i] - point.value()[i] + model.shift(i, point.theta());
    }
    return new Rest(point, slopes, model, residual, settled);
  }

  private static double[] step(Rest rest) {
    double[] step = rest.model().mean(rest.residual());
    for (int k = 0; k < step.length; k++) {
      step[k] -= rest.point().theta()[k];
    }
    return step;
  }

  private static Optional<Point> better(
      Point from, double[] step, Forecast forecast, double[] read, double[] variance) {
    double before = cost(from, read, variance);
    double share = 1;
    for (int i = 0; i < HALVINGS; i++) {
      double[] theta = from.theta().clone();
      for (int k = 0; k < theta.length; k++) {
        theta[k] += share * step[k];
      }
      Optional<Point> there = forecast.at(theta);
      if (there.isPresent() && cost(there.get(), read, variance) < before) {
        return there;
      }
      share /= 2;
    }
    return Optional.empty();
  }

  /** ‖θ‖² + Σ (y − f)²/D: twice what the logarithm of the density lacks. */
  static double cost(Point point, double[] read, double[] variance) {
    double cost = 0;
    for (double each : point.theta()) {
      cost += each * each;
    }
    for (int i = 0; i < read.length; i++) {
      double left = read[i] - point.value()[i];
      cost += left * left / variance[i];
    }
    return Double.isNaN(cost) ? Double.POSITIVE_INFINITY : cost;
  }

  private static double largest(double[] step) {
    double largest = 0;
    for (double each : step) {
      largest = Math.max(largest, Math.abs(each));
    }
    return largest;
  }
}
