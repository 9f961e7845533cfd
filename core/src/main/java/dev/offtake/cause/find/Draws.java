package dev.offtake.cause.find;

import dev.offtake.cause.chance.LinearModel;
import dev.offtake.cause.chance.Logs;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * Weighs a cause by drawing extents and unknowns and solving each draw, where a forecast bends
 * within what nobody knows: at a stop, a choke, a trip.
 *
 * <p>Importance sampling with a defensive mixture (Hesterberg, Weighted average importance sampling
 * and defensive mixture distributions, Technometrics 37, 1995): most draws come from what the
 * straight forecast makes of the readings, the rest from what was believed before, so that no
 * weight can be larger than what was read is likely at best over the share of the rest.
 */
final class Draws {
  /** Share of draws that know nothing of the readings. */
  private static final double DEFENSIVE = 0.3;

  /** A forecast bends when a draw is off the straight one by so much of its own error. */
  private static final double BENDS = 0.5;

  /** Draws that are tried before it is believed that a forecast is straight. */
  private static final int TRIED = 6;

  /** Draws between two looks at how sure the evidence is. */
  private static final int BATCH = 40;

  /** Of these, how many know nothing of the readings. */
  private static final int BLIND = (int) (DEFENSIVE * BATCH);

  /** Draws of one cause at most. */
  private static final int MOST = 240;

  /**
   * Standard error of the evidence of the likeliest cause, as a share of it, at which more draws
   * say little more.
   */
  private static final double SURE = 0.1;

  /** The same of any cause, however unlikely: with more, a few draws rule. */
  private static final double LEAST_SURE = 0.15;

  /** Share of draws that may be left out because they are hard to solve. */
  private static final double LEFT_OUT = 0.1;

  private final Weigher weigher;
  private final List<Clue> clues;
  private final List<Unknown> unknowns;
  private final List<Scene> scenes;

  Draws(Weigher weigher, List<Clue> clues, List<Unknown> unknowns, List<Scene> scenes) {
    this.weigher = weigher;
    this.clues = clues;
    this.unknowns = unknowns;
    this.scenes = scenes;
  }

  /**
   * Weighs.
   *
   * @param weighed the cause, weighed with a straight forecast
   * @param slopes that it was weighed with
   * @param solver of the cause
   * @param rival evidence that would make the cause the likeliest; the further it stays behind, the
   *     less sure its own has to be
   * @param seed of the draws
   * @return evidence, a natural logarithm; empty where the straight forecast will do
   */
  Optional<Double> evidence(
      Weighed weighed, double[][] slopes, CauseSolver solver, double rival, long seed) {
    Run run = new Run(weighed.course(), slopes, solver, seed);
    run.draw(false, TRIED);
    if (run.bend < BENDS) {
      return Optional.empty();
    }
    run.logs.clear();
    double[] logs = {};
    while (logs.length < MOST && !sure(logs, rival)) {
      run.draw(true, BLIND);
      run.draw(false, BATCH - BLIND);
      logs = run.logs.stream().mapToDouble(log -> log).toArray();
    }
    Weigher.Model model = weigher.model(slopes);
    double straight =
        Logs.sum(
            weighed.course().points().stream()
                .mapToDouble(p -> Math.log(p.weight()) + model.logSound(p.forecast()))
                .toArray());
    return Optional.of(Logs.sum(truncated(logs), misread(weighed.evidence(), straight)));
  }

  /**
   * Whether the mean weight has a small enough standard error; no draws are never sure.
   *
   * @param rival logarithm of the mean weight at which the cause is the likeliest
   */
  static boolean sure(double[] logs, double rival) {
    double top = Arrays.stream(logs).max().orElse(Double.NEGATIVE_INFINITY);
    if (!(top > Double.NEGATIVE_INFINITY)) {
      return false;
    }
    double sum = 0;
    double squares = 0;
    for (double log : logs) {
      double weight = Math.exp(log - top);
      sum += weight;
      squares += weight * weight;
    }
    double variance = squares / logs.length - sum / logs.length * (sum / logs.length);
    double behind = rival - truncated(logs);
    double enough = Math.min(LEAST_SURE, SURE * Math.exp(Math.max(0, behind) / 2));
    return Math.sqrt(Math.max(0, variance) * logs.length) < enough * sum;
  }

  /**
   * Logarithm of the mean weight, no weight taken for more than the square root of their number
   * times the mean: one lucky draw would outweigh all others.
   *
   * <p>E. L. Ionides, Truncated importance sampling, Journal of Computational and Graphical
   * Statistics 17 (2008) 295–311 (from memory).
   */
  static double truncated(double[] logs) {
    double count = Math.log(logs.length);
    double most = Logs.sum(logs) - count + count / 2;
    return Logs.sum(Arrays.stream(logs).map(log -> Math.min(log, most)).toArray()) - count;
  }

  /** The part of a straight evidence in which something was misread: it is left straight. */
  private static double misread(double evidence, double sound) {
    return evidence + Math.log(-Math.expm1(Math.min(0, sound - evidence)));
  }

  /** Draws of one cause. */
  private final class Run {
    private final Course course;
    private final double[][] slopes;
    private final CauseSolver solver;
    private final SplittableRandom random;
    private final LinearModel model;
    private final double[] variance;
    private final double[] mass;
    private final double evidence;
    private final List<Double> logs = new ArrayList<>();
    private double bend;
    private int leftOut;

    Run(Course course, double[][] slopes, CauseSolver solver, long seed) {
      this.course = course;
      this.slopes = slopes;
      this.solver = solver;
      random = new SplittableRandom(seed);
      model = weigher.readings(slopes);
      variance = weigher.variance(slopes);
      double[] straight = new double[course.points().size()];
      for (int i = 0; i < straight.length; i++) {
        Course.Point point = course.points().get(i);
        double[] residual = weigher.residual(point.forecast());
        straight[i] = Math.log(point.weight()) + model.logEvidence(residual);
      }
      mass = Logs.shares(straight);
      evidence = Logs.sum(straight);
    }

    /** Draws some, with their extents spread evenly over what is likely or was believed before. */
    void draw(boolean blind, int count) {
      for (int i = 0; i < count; i++) {
        draw(blind, (i + random.nextDouble()) / count);
      }
    }

    private void draw(boolean blind, double at) {
      double[] prior = gaussians(unknowns.size());
      Course.Point point = blind ? anywhere(at) : likely(at);
      double[] residual = weigher.residual(point.forecast());
      double[] theta = blind ? prior : model.draw(residual, prior, gaussians(residual.length));
      boolean patient = leftOut >= LEFT_OUT * (logs.size() + BATCH);
      Optional<List<SceneState>> states = solve(point, theta, patient);
      if (states.isEmpty() && patient) {
        logs.add(Double.NEGATIVE_INFINITY);
      } else if (states.isEmpty()) {
        leftOut++;
      } else {
        weigh(point, theta, states.get());
      }
    }

    private void weigh(Course.Point point, double[] theta, List<SceneState> states) {
      double[] exact = exact(states, theta);
      double[] straight = new double[clues.size()];
      for (int c = 0; c < straight.length; c++) {
        straight[c] = point.forecast()[c];
        for (int u = 0; u < theta.length; u++) {
          straight[c] += slopes[c][u] * theta[u];
        }
      }
      bend = Math.max(bend, weigher.apart(exact, straight));
      double likely = Math.log1p(-DEFENSIVE) + weigher.logNormal(straight, variance) - evidence;
      logs.add(weigher.log(exact, variance) - Logs.sum(likely, Math.log(DEFENSIVE)));
    }

    private double[] gaussians(int count) {
      double[] all = new double[count];
      for (int i = 0; i < count; i++) {
        all[i] = random.nextGaussian();
      }
      return all;
    }

    private Course.Point likely(double at) {
      int i = 0;
      for (double sum = mass[0]; sum < at && i < mass.length - 1; sum += mass[i]) {
        i++;
      }
      return course.points().get(i);
    }

    private Course.Point anywhere(double at) {
      int i = 0;
      double sum = course.points().get(0).weight();
      while (sum < at && i < course.points().size() - 1) {
        i++;
        sum += course.points().get(i).weight();
      }
      return course.points().get(i);
    }

    private Optional<List<SceneState>> solve(Course.Point point, double[] theta, boolean patient) {
      List<Moved> moved = new Moving(unknowns).of(scenes.size(), theta);
      return patient ? solver.states(point.place(), moved) : solver.nearby(point.place(), moved);
    }

    private double[] exact(List<SceneState> states, double[] theta) {
      double[] exact = clues.stream().mapToDouble(clue -> clue.value(states)).toArray();
      for (int u = 0; u < theta.length; u++) {
        if (unknowns.get(u).readingOnly()) {
          for (int c = 0; c < exact.length; c++) {
            exact[c] += slopes[c][u] * theta[u];
          }
        }
      }
      return exact;
    }
  }
}
