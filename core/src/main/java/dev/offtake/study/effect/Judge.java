package dev.offtake.study.effect;

import dev.offtake.part.LeakLoop;
import dev.offtake.part.Mode;
import dev.offtake.part.OperatingLimit;
import dev.offtake.part.Part;
import dev.offtake.part.Role;
import dev.offtake.part.Trip;
import dev.offtake.part.View;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Style;
import dev.offtake.severity.Criterion;
import dev.offtake.solve.Solution;
import dev.offtake.study.Fault;
import dev.offtake.study.Notice;
import dev.offtake.study.Sign;
import dev.offtake.study.Twins;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Compares a broken state with the healthy one of the same occasion and tells what it leads to. */
final class Judge {
  /** Less air than this is a trickle, kg/s (1 lb/min; assumption). */
  static final double TRICKLE = 0.45359237 / 60;

  /** Air above this burns, K (200 °F; common practice, no source). */
  private static final double HOT = 366.5;

  /** Hotter than ever by this much counts, K (30 °F; assumption). */
  private static final double HOTTER = 30 / 1.8;

  /** Openings that differ by less say nothing. */
  private static final double MOVED = 0.1;

  private final Solution healthy;
  private final Solution now;
  private final List<Fault> faults;
  private final List<String> sides;
  private final double[] hottest;
  private final List<Finding> findings = new ArrayList<>();

  private Judge(
      Solution healthy, Solution now, List<Fault> faults, List<String> sides, double[] hottest) {
    this.healthy = healthy;
    this.now = now;
    this.faults = faults;
    this.sides = sides;
    this.hottest = hottest;
  }

  /**
   * Judges.
   *
   * @param healthy the healthy state
   * @param now the broken one, solved
   * @param faults what is broken
   * @param sides names of the sides
   * @param hottest temperature of each point at the hottest healthy occasion, K
   * @param signs what can be seen
   */
  static List<Finding> findings(
      Solution healthy,
      Solution now,
      List<Fault> faults,
      List<String> sides,
      double[] hottest,
      List<Sign> signs) {
    Judge judge = new Judge(healthy, now, faults, sides, hottest);
    judge.all();
    boolean shows = signs.stream().anyMatch(sign -> sign.verdict() != Sign.Verdict.HIDDEN);
    if (judge.findings.isEmpty()) {
      judge.findings.add(Finding.plain(shows ? Criterion.SHOWS : Criterion.NOTHING, ""));
    }
    return judge.findings;
  }

  private void all() {
    protections();
    List<Part> parts = now.network().parts();
    for (int i = 0; i < parts.size(); i++) {
      Part part = parts.get(i);
      int was = i < healthy.network().parts().size() ? i : -1;
      if (part.role() == Role.SOURCE && part.kind().endsWith(" tap")) {
        recirculation(part, i, was);
      } else if (part.kind().equals("leak")) {
        leak(part, i, was);
      } else if (part.kind().equals("relief valve") && became(part, "open")) {
        findings.add(Finding.plain(Criterion.RELIEVED, part.name()));
      }
    }
    pieces();
    users();
    hotter();
    findings.sort(Comparator.comparing(Finding::criterion));
  }

  private boolean became(Part part, String position) {
    return now.is(part.name(), position)
        && (healthy.network().part(part.name()) < 0 || !healthy.is(part.name(), position));
  }

  /** Trips and leak loops: whether they act, and whether they ought to. */
  private void protections() {
    boolean acts = false;
    for (Part part : now.network().parts()) {
      if (part instanceof Trip trip) {
        boolean tripped = now.is(part.name(), "tripped");
        if (became(part, "tripped")) {
          acts = true;
          findings.add(Finding.plain(Criterion.TRIPPED, part.name()));
        } else if (!tripped) {
          passed(trip);
        }
      } else if (part instanceof LeakLoop loop) {
        acts |= became(part, "lit");
        passed(loop);
      } else if (part instanceof OperatingLimit limit && became(part, OperatingLimit.PASSED)) {
        passed(limit);
      }
    }
    if (acts && now.network().parts().stream().noneMatch(this::newlyLit)) {
      findings.add(Finding.plain(Criterion.UNTOLD, ""));
    }
  }

  private boolean newlyLit(Part part) {
    return part.kind().equals("light") && became(part, "on");
  }

  private void passed(Trip trip) {
    int point = now.network().point(trip.watches().point());
    if (trip.above() < 0 || point < 0) {
      return;
    }
    double limit = trip.parameters().get(trip.above()).value();
    boolean gauge = trip.parameters().get(trip.above()).dimension() == Dimension.GAUGE_PRESSURE;
    double at = gauge ? limit + now.conditions().ambientP() : limit;
    double value = trip.watches().temperature() ? now.temperature(point) : now.sensed(point);
    if (value > at) {
      Dimension measured =
          trip.watches().temperature() ? Dimension.TEMPERATURE : Dimension.ABSOLUTE_PRESSURE;
      findings.add(Finding.limit(Criterion.UNPROTECTED, trip.name(), value, at, measured));
    }
  }

  private void passed(LeakLoop loop) {
    int zone = now.network().point(loop.zone());
    double alarm = loop.parameters().get(0).value();
    if (zone >= 0 && now.temperature(zone) > alarm && !now.is(loop.name(), "lit")) {
      findings.add(
          Finding.limit(
              Criterion.UNPROTECTED,
              loop.name(),
              now.temperature(zone),
              alarm,
              Dimension.TEMPERATURE));
    }
  }

  private void passed(OperatingLimit limit) {
    View view = now.view(now.network().part(limit.name()), Style.SHOP);
    Dimension measured =
        limit.watches().temperature() ? Dimension.TEMPERATURE : Dimension.ABSOLUTE_PRESSURE;
    double value = limit.value(view);
    double allowed = limit.nearest(view);
    findings.add(Finding.limit(Criterion.OVER_LIMIT, limit.name(), value, allowed, measured));
  }

  private void recirculation(Part tap, int i, int was) {
    double flow = now.flow(i, 0);
    double before = was < 0 ? 0 : healthy.flow(was, 0);
    int point = now.network().point(tap.legs().get(0).to());
    if (flow < -TRICKLE && flow < before - TRICKLE && point >= 0) {
      findings.add(
          Finding.flow(
              Criterion.RECIRCULATION, tap.name(), -flow, -before, now.temperature(point)));
    }
  }

  private void leak(Part leak, int i, int was) {
    double flow = now.flow(i, 0);
    double before = was < 0 ? 0 : healthy.flow(was, 0);
    int point = now.network().point(leak.legs().get(0).from());
    boolean hot = point >= 0 && now.temperature(point) > HOT;
    if (hot && flow > before + TRICKLE) {
      findings.add(Finding.flow(Criterion.LEAK, leak.name(), flow, before, now.temperature(point)));
    }
  }

  private void pieces() {
    for (Fault fault : faults) {
      if (fault.mode().traits().contains(Mode.Trait.PIECES)) {
        findings.add(Finding.plain(Criterion.PIECES, fault.part().name()));
      }
    }
  }

  /** Users that go short now and did not before; the same on all sides is worse. */
  private void users() {
    Map<String, Set<String>> shortSides = new LinkedHashMap<>();
    List<Part> parts = now.network().parts();
    for (int i = 0; i < parts.size(); i++) {
      Part part = parts.get(i);
      if (part.role() == Role.USER && Notice.goesShort(regime(healthy, i), regime(now, i))) {
        double was = healthy.flow(i, 0);
        findings.add(Finding.flow(Criterion.SHORT, part.name(), now.flow(i, 0), was, Double.NaN));
        shortSides
            .computeIfAbsent(Twins.withoutSide(part.name(), sides), k -> new LinkedHashSet<>())
            .add(Twins.sideOf(part.name(), sides));
      }
    }
    shortSides.forEach(
        (service, on) -> {
          if (sides.size() > 1 && on.size() == sides.size()) {
            findings.add(Finding.plain(Criterion.ALL_SHORT, service));
          }
        });
  }

  private static String regime(Solution solution, int part) {
    return solution.doing(part, Style.SHOP).regime();
  }

  private void hotter() {
    int worst = -1;
    double most = HOTTER;
    for (int point = 0; point < hottest.length; point++) {
      double over = now.temperature(point) - hottest[point];
      if (over > most) {
        most = over;
        worst = point;
      }
    }
    if (worst >= 0) {
      String name = now.network().points().get(worst).name();
      findings.add(
          Finding.limit(
              Criterion.HOTTER,
              name,
              now.temperature(worst),
              hottest[worst],
              Dimension.TEMPERATURE));
    }
  }

  /** Valves that stand elsewhere than in the healthy state, except those that are broken. */
  static List<Outcome.Move> moves(Solution healthy, Solution now, List<Fault> faults) {
    List<Outcome.Move> moves = new ArrayList<>();
    List<Part> parts = healthy.network().parts();
    for (int i = 0; i < parts.size(); i++) {
      Part part = parts.get(i);
      int opening = part.observables().indexOf("opening");
      boolean broken = faults.stream().anyMatch(f -> f.part().name().equals(part.name()));
      if (part.role() == Role.VALVE && opening >= 0 && !broken) {
        double was = healthy.view(i, Style.SHOP).observed(opening);
        double is = now.view(i, Style.SHOP).observed(opening);
        if (Math.abs(is - was) > MOVED) {
          moves.add(new Outcome.Move(part.name(), was, is));
        }
      }
    }
    moves.sort(Comparator.comparingDouble(move -> -Math.abs(move.now() - move.healthy())));
    return moves;
  }

  /** The state of a failed part; null when it has no place in the network. */
  static @Nullable Integer place(Solution solution, Fault fault) {
    int at = solution.network().part(fault.part().name());
    return at < 0 ? null : at;
  }
}
