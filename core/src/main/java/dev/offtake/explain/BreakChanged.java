package dev.offtake.explain;

import dev.offtake.part.Role;
import dev.offtake.quantity.Dimension;
import dev.offtake.study.Notice;
import dev.offtake.study.Sign;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Numbers that differ between two states, the most significant first. */
final class BreakChanged {
  /** So much flow counts as much as what a crew calls low, kg/s (5 lb/min): an assumption. */
  private static final double MUCH_FLOW = 10 * Compared.FLOW;

  /** Likewise for openings, a share of the stroke: an assumption. */
  private static final double MUCH_OPENING = 0.1;

  /** What is on or off stands above all numbers. */
  private static final double FIRST = 1e6;

  private final Compared c;
  private final BreakSeen seen;
  private final List<BreakAnswer.Changed> rows = new ArrayList<>();

  private BreakChanged(Compared c) {
    this.c = c;
    seen = new BreakSeen(c.is());
  }

  /**
   * The rows.
   *
   * @param c the healthy state and the broken one
   * @param signs what can be looked at
   */
  static List<BreakAnswer.Changed> of(Compared c, List<Sign> signs) {
    BreakChanged changed = new BreakChanged(c);
    changed.lights(signs);
    changed.points();
    changed.parts();
    changed.rows.sort(
        Comparator.comparingDouble((BreakAnswer.Changed row) -> row.weight()).reversed());
    return changed.rows;
  }

  private void add(
      String name, Dimension measures, double healthy, double now, String where, double weight) {
    rows.add(new BreakAnswer.Changed(name, measures, healthy, now, where, weight));
  }

  private void lights(List<Sign> signs) {
    for (Sign sign : signs) {
      boolean onOff = sign.what() == Sign.What.LIGHT || sign.what() == Sign.What.TRIP;
      if (onOff && sign.verdict() == Sign.Verdict.PLAIN) {
        String where = sign.seen().isEmpty() ? "by its light" : sign.seen();
        add(sign.part(), Dimension.NUMBER, sign.healthy(), sign.now(), where, FIRST);
      }
    }
  }

  private void points() {
    for (int i = 0; i < c.is().network().points().size(); i++) {
      String name = c.point(i);
      if (c.pressureMoved(i)) {
        double weight = Math.abs(c.pressureChange(i)) / Notice.CREW_PRESSURE;
        String where = seen.point(name, false);
        add(name, Dimension.GAUGE_PRESSURE, c.pressureWas(i), c.pressureIs(i), where, weight);
      }
      if (c.temperatureMoved(i)) {
        double weight = Math.abs(c.temperatureChange(i)) / Notice.CREW_TEMPERATURE;
        double was = c.was().temperature(i);
        double is = c.is().temperature(i);
        add(name, Dimension.TEMPERATURE, was, is, seen.point(name, true), weight);
      }
    }
  }

  private void parts() {
    for (int i = 0; i < c.parts(); i++) {
      String name = c.part(i).name();
      Role role = c.part(i).role();
      boolean told = role == Role.SOURCE || role == Role.USER || BreakPlaces.blows(c, i);
      if (told && c.flowMoved(i)) {
        double was = c.flowWas(i);
        double is = c.flowIs(i);
        double weight = Math.abs(is - was) / MUCH_FLOW;
        add(name, Dimension.MASS_FLOW, was, is, BreakSeen.NOWHERE, weight);
      }
      double moved = c.openingIs(i) - c.openingWas(i);
      if (Math.abs(moved) > Compared.OPENING) {
        double weight = Math.abs(moved) / MUCH_OPENING;
        String where = "its position mark";
        add(name, Dimension.SHARE, c.openingWas(i), c.openingIs(i), where, weight);
      }
    }
  }
}
