package dev.offtake.study;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Predicate;

/**
 * Finds where along a sweep a person could tell the broken system from the healthy one, on the way
 * up.
 *
 * <p>Both are compared at every stop; where two neighbours differ, the edge between them is found
 * by bisection. What begins and ends between two stops is not seen.
 */
public final class Stretches {
  /** An edge is known to a stop's distance over two to this power. */
  private static final int HALVINGS = 8;

  private final Traced healthy;
  private final Traced now;

  private Stretches(Traced healthy, Traced now) {
    this.healthy = healthy;
    this.now = now;
  }

  /**
   * Both systems at one value.
   *
   * @param x the value, SI
   * @param verdict empty without an answer of both
   */
  private record Look(
      double x, Step healthy, Step now, Optional<Sign.Verdict> verdict, List<Sign> signs) {

    static Look of(Step healthy, Step now) {
      boolean both = healthy.answered() && now.answered();
      List<Sign> signs =
          both ? Notice.between(healthy.solution(), now.solution()) : List.<Sign>of();
      Optional<Sign.Verdict> verdict =
          both ? Optional.of(Notice.best(signs, false)) : Optional.empty();
      return new Look(healthy.x(), healthy, now, verdict, signs);
    }
  }

  /**
   * The stretches, by rising value, from the first to the last stop without a hole.
   *
   * @param healthy the healthy system
   * @param now the broken one over the same stops
   */
  public static List<Stretch> between(Traced healthy, Traced now) {
    return new Stretches(healthy, now).stretches();
  }

  private List<Stretch> stretches() {
    List<Stretch> stretches = new ArrayList<>();
    List<Look> looks = looks();
    List<Look> same = new ArrayList<>();
    double from = looks.get(0).x();
    for (Look look : looks) {
      if (!same.isEmpty() && !same.get(0).verdict().equals(look.verdict())) {
        double edge = edge(same.get(same.size() - 1), look);
        stretches.add(stretch(same, from, edge));
        same.clear();
        from = edge;
      }
      same.add(look);
    }
    stretches.add(stretch(same, from, looks.get(looks.size() - 1).x()));
    return stretches;
  }

  private List<Look> looks() {
    Map<Double, Step> other = new HashMap<>();
    now.up().forEach(step -> other.put(step.x(), step));
    TreeSet<Double> stops = new TreeSet<>(healthy.curve().sweep().stops());
    List<Look> looks = new ArrayList<>();
    for (Step step : healthy.up()) {
      Step there = other.get(step.x());
      if (stops.contains(step.x()) && there != null) {
        looks.add(Look.of(step, there));
      }
    }
    return looks;
  }

  private static Stretch stretch(List<Look> looks, double from, double to) {
    Optional<Sign.Verdict> verdict = looks.get(0).verdict();
    List<Stretch.Best> best = new ArrayList<>();
    verdict.filter(seen -> seen != Sign.Verdict.HIDDEN).ifPresent(seen -> add(best, looks, seen));
    if (verdict.isPresent() && verdict.get() != Sign.Verdict.PLAIN) {
      most(looks, sign -> sign.atPort() && sign.verdict() == Sign.Verdict.PLAIN)
          .ifPresent(best::add);
    }
    return new Stretch(from, to, verdict, best);
  }

  /** Adds the best change of word and the best number among those of a verdict. */
  private static void add(List<Stretch.Best> best, List<Look> looks, Sign.Verdict verdict) {
    for (boolean number : new boolean[] {false, true}) {
      most(
              looks,
              sign ->
                  !sign.atPort()
                      && (sign.verdict() == verdict)
                      && (Double.isFinite(sign.weight()) == number))
          .ifPresent(best::add);
    }
  }

  /** The heaviest of some signs, the first of equals. */
  private static Optional<Stretch.Best> most(List<Look> looks, Predicate<Sign> which) {
    Optional<Stretch.Best> most = Optional.empty();
    for (Look look : looks) {
      for (Sign sign : look.signs()) {
        boolean more = most.isEmpty() || (sign.weight() > most.get().sign().weight());
        if (which.test(sign) && more) {
          most = Optional.of(new Stretch.Best(look.x(), sign));
        }
      }
    }
    return most;
  }

  private double edge(Look low, Look high) {
    return low.verdict().isPresent() && high.verdict().isPresent()
        ? bisected(low, high)
        : answersEnd(low, high);
  }

  private double bisected(Look low, Look high) {
    Look below = low;
    double above = high.x();
    for (int i = 0; i < HALVINGS; i++) {
      double x = (below.x() + above) / 2;
      Look middle =
          Look.of(
              healthy.walk().on(below.healthy().solution(), x),
              now.walk().on(below.now().solution(), x));
      if (middle.verdict().equals(low.verdict())) {
        below = middle;
      } else {
        above = x;
      }
    }
    return (below.x() + above) / 2;
  }

  /** Where the answers of the first of the two end, or those of the last begin. */
  private double answersEnd(Look low, Look high) {
    boolean ends = low.verdict().isPresent();
    double edge = ends ? high.x() : low.x();
    for (Traced one : List.of(healthy, now)) {
      for (Step step : one.up()) {
        boolean between = step.x() > low.x() && step.x() < high.x();
        if (between && step.answered()) {
          edge = ends ? Math.min(edge, step.x()) : Math.max(edge, step.x());
        }
      }
    }
    return edge;
  }
}
