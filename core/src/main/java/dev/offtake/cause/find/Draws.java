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
   * @param count how many draws
   * @param seed of the draws
   * @return evidence, a natural logarithm; empty where the straight forecast will do
   */
  Optional<Double> evidence(
      Weighed weighed, double[][] slopes, CauseSolver solver, int count, long seed) {
    Run run = new Run(weighed.course(), slopes, solver, seed);
    for (int i = 0; i < TRIED; i++) {
      run.draw(false);
    }
    if (run.bend < BENDS) {
      return Optional.empty();
    }
    run.logs.clear();
    for (int i = 0; i < count; i++) {
      run.draw(i < DEFENSIVE * count);
    }
    double[] logs = run.logs.stream().mapToDouble(log -> log).toArray();
    Weigher.Model model = weigher.model(slopes);
    double straight =
        Logs.sum(
            weighed.course().points().stream()
                .mapToDouble(p -> Math.log(p.weight()) + model.logSound(p.forecast()))
                .toArray());
    return Optional.of(Logs.sum(truncated(logs), misread(weighed.evidence(), straight)));
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

    void draw(boolean blind) {
      double[] prior = gaussians(unknowns.size());
      Course.Point point = blind ? anywhere() : likely();
      double[] residual = weigher.residual(point.forecast());
      double[] theta = blind ? prior : model.draw(residual, prior, gaussians(residual.length));
      Optional<List<SceneState>> states = solve(point, theta);
      if (states.isEmpty()) {
        logs.add(Double.NEGATIVE_INFINITY);
        return;
      }
      double[] exact = exact(states.get(), theta);
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

    private Course.Point likely() {
      double at = random.nextDouble();
      int i = 0;
      for (double sum = mass[0]; sum < at && i < mass.length - 1; sum += mass[i]) {
        i++;
      }
      return course.points().get(i);
    }

    private Course.Point anywhere() {
      double at = random.nextDouble();
      int i = 0;
      double sum = course.points().get(0).weight();
      while (sum < at && i < course.points().size() - 1) {
        i++;
        sum += course.points().get(i).weight();
      }
      return course.points().get(i);
    }

    private Optional<List<SceneState>> solve(Course.Point point, double[] theta) {
      return solver.states(point.place(), new Moving(unknowns).of(scenes.size(), theta));
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
