package dev.offtake.profile;

import java.util.ArrayList;
import java.util.List;

/**
 * Core and fan speed over time, straight between knots and held after the last.
 *
 * @param knots by time; the first is at 0 s
 */
public record CoreLine(List<Knot> knots) {
  /** Times that differ by less are the same, s. */
  private static final double SAME = 1e-9;

  /**
   * Speeds at a time.
   *
   * @param at s
   * @param core physical, a fraction
   * @param fan physical, a fraction
   */
  public record Knot(double at, double core, double fan) {}

  /** Keeps its knots. */
  public CoreLine {
    knots = List.copyOf(knots);
  }

  /** Speeds that do not move. */
  static CoreLine from(Speeds speeds) {
    return new CoreLine(List.of(new Knot(0, speeds.core(), speeds.fan())));
  }

  /** The same line, cut off at a time and led on to other speeds on a straight way. */
  CoreLine then(double from, double until, double core, double fan) {
    List<Knot> kept = new ArrayList<>();
    Knot here = at(from);
    knots.stream().filter(knot -> knot.at() < from - SAME).forEach(kept::add);
    kept.add(here);
    kept.add(new Knot(until, core, fan));
    return new CoreLine(kept);
  }

  /** Speeds at a time, s. */
  public Knot at(double time) {
    Knot before = knots.get(0);
    for (Knot knot : knots) {
      if (knot.at() > time) {
        double share = (time - before.at()) / (knot.at() - before.at());
        return new Knot(
            time,
            before.core() + share * (knot.core() - before.core()),
            before.fan() + share * (knot.fan() - before.fan()));
      }
      before = knot;
    }
    return new Knot(time, before.core(), before.fan());
  }
}
