package dev.offtake.study;

import dev.offtake.logic.Condition;
import dev.offtake.part.Control;
import dev.offtake.part.EngineGauge;
import dev.offtake.part.Facts;
import dev.offtake.part.Gauge;
import dev.offtake.part.LeakLoop;
import dev.offtake.part.Light;
import dev.offtake.part.Part;
import dev.offtake.part.Role;
import dev.offtake.part.TestPort;
import dev.offtake.part.Trip;
import dev.offtake.part.View;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Style;
import dev.offtake.solve.Solution;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Judges who would notice that a state is not the healthy one: gauge by gauge, light by light.
 *
 * <p>A change is plain when it is larger than twice what the gauge may be wrong, and than what a
 * crew calls low or high; it is lost in the gauge when the needle still moves by half a step or by
 * half of what it may be wrong. A light, a trip or a user that goes short is plain.
 */
public final class Notice {
  /** A crew that compares two needles calls less than this normal, Pa (3 psi): an assumption. */
  public static final double CREW_PRESSURE = 20_684.27;

  /** Likewise for temperatures, K (15 °F): an assumption. */
  public static final double CREW_TEMPERATURE = 15 / 1.8;

  /** Likewise for fuel flow, kg/s (100 lb/h): an assumption. */
  private static final double CREW_FUEL = 100 * 0.45359237 / 3600;

  /** Likewise for core speed, a share of full speed: an assumption. */
  private static final double CREW_SPEED = 0.01;

  /** Error of a test gauge, Pa (0.5 psi): an assumption. */
  private static final double TEST_GAUGE = 3447.379;

  private static final String FLIGHT_DECK = "flight deck";

  private final Solution healthy;
  private final Solution now;
  private final List<Sign> signs = new ArrayList<>();

  private Notice(Solution healthy, Solution now) {
    this.healthy = healthy;
    this.now = now;
  }

  /**
   * What can be looked at, and whether it would be noticed.
   *
   * @param healthy an answer of the healthy system
   * @param now an answer of the broken one at the same power and line-up
   * @return in the order of the file; empty when one of the two is no answer
   */
  public static List<Sign> between(Solution healthy, Solution now) {
    Notice notice = new Notice(healthy, now);
    if (healthy.solved() && now.solved()) {
      for (Part part : healthy.network().parts()) {
        notice.look(part);
      }
    }
    return List.copyOf(notice.signs);
  }

  /** The best verdict of those that are seen without a test gauge, or with one. */
  public static Sign.Verdict best(List<Sign> signs, boolean atPort) {
    return signs.stream()
        .filter(sign -> sign.atPort() == atPort)
        .map(Sign::verdict)
        .min(Sign.Verdict::compareTo)
        .orElse(Sign.Verdict.HIDDEN);
  }

  private void look(Part part) {
    if (part instanceof Gauge gauge) {
      needles(gauge);
    } else if (part instanceof EngineGauge gauge) {
      engine(gauge);
    } else if (part instanceof Light) {
      onOrOff(Sign.What.LIGHT, part.name(), "on", "off", FLIGHT_DECK);
    } else if (part instanceof LeakLoop && !hasLight(part.name())) {
      onOrOff(Sign.What.LIGHT, part.name(), "on", "off", "");
    } else if (part instanceof Trip) {
      onOrOff(Sign.What.TRIP, part.name(), "tripped", "normal", "");
    } else if (part.kind().equals(TestPort.KIND.name())) {
      testPort(part);
    } else if (part.role() == Role.USER) {
      user(part);
    }
  }

  private void needles(Gauge gauge) {
    Optional<View> before = view(healthy, gauge.name());
    Optional<View> after = view(now, gauge.name());
    boolean same = find(now, gauge.name()) instanceof Gauge;
    if (before.isEmpty() || after.isEmpty() || !same) {
      return;
    }
    Gauge other = (Gauge) find(now, gauge.name());
    double error = gauge.parameters().get(0).high() + gauge.each();
    double crew = gauge.temperature() ? CREW_TEMPERATURE : CREW_PRESSURE;
    for (int i = 0; i < gauge.needles().size(); i++) {
      Facts.Needle needle = gauge.needles().get(i);
      double was = clamp(gauge.scale(), gauge.shows(i, before.get()));
      double is = clamp(other.scale(), other.shows(i, after.get()));
      double limit = Math.max(2 * error, crew);
      double least = least(gauge.step(), error);
      number(
          Sign.What.NEEDLE,
          gauge.name(),
          needle.mark(),
          needle.reads().name(),
          dimension(gauge),
          new double[] {was, is, limit, least},
          gauge.seen());
    }
  }

  private static Dimension dimension(Gauge gauge) {
    if (gauge.temperature()) {
      return Dimension.TEMPERATURE;
    }
    boolean absolute = gauge.relative().equals("absolute");
    return absolute ? Dimension.ABSOLUTE_PRESSURE : Dimension.GAUGE_PRESSURE;
  }

  private static double clamp(Gauge.Scale scale, double value) {
    return Math.max(scale.low(), Math.min(scale.high(), value));
  }

  /** Half a step or half the error, whichever is less and above zero. */
  private static double least(double step, double error) {
    if (step > 0 && error > 0) {
      return Math.min(step, error) / 2;
    }
    return Math.max(step, error) / 2;
  }

  private void engine(EngineGauge gauge) {
    Optional<View> before = view(healthy, gauge.name());
    Optional<View> after = view(now, gauge.name());
    if (before.isEmpty() || after.isEmpty()) {
      return;
    }
    double was = gauge.shift(before.get());
    double is = find(now, gauge.name()) instanceof EngineGauge g ? g.shift(after.get()) : was;
    if (Double.isNaN(was) || Double.isNaN(is)) {
      return;
    }
    Dimension dimension = gauge.parameters().get(0).dimension();
    double limit =
        switch (dimension) {
          case MASS_FLOW -> CREW_FUEL;
          case SHARE -> CREW_SPEED;
          default -> CREW_TEMPERATURE;
        };
    double[] numbers = {was, is, limit, limit / 4};
    number(
        Sign.What.ENGINE,
        gauge.name(),
        "",
        gauge.shows() + " shift",
        dimension,
        numbers,
        FLIGHT_DECK);
  }

  private void testPort(Part port) {
    String point = port.legs().get(0).from();
    boolean gauged =
        healthy.network().parts().stream()
            .anyMatch(part -> part instanceof Gauge gauge && reads(gauge, point));
    int number = healthy.network().point(point);
    int other = now.network().point(point);
    if (gauged || number < 0 || other < 0) {
      return;
    }
    double was = healthy.sensed(number) - healthy.conditions().ambientP();
    double is = now.sensed(other) - now.conditions().ambientP();
    double[] numbers = {was, is, Math.max(2 * TEST_GAUGE, CREW_PRESSURE), TEST_GAUGE / 2};
    number(
        Sign.What.NEEDLE,
        port.name(),
        "",
        point + " pressure",
        Dimension.GAUGE_PRESSURE,
        numbers,
        port.name());
  }

  /** Whether a gauge shows a point's pressure, so that a test gauge there shows no more. */
  private static boolean reads(Gauge gauge, String point) {
    return gauge.needles().stream()
        .anyMatch(n -> n.reads().point().equals(point) && !n.reads().temperature());
  }

  /** Adds what has a number: healthy, now, limit, and the least change that could be read. */
  private void number(
      Sign.What what,
      String part,
      String needle,
      String reads,
      Dimension dimension,
      double[] n,
      String seen) {
    double change = Math.abs(n[1] - n[0]);
    Sign.Verdict verdict =
        change > n[2]
            ? Sign.Verdict.PLAIN
            : change > n[3] ? Sign.Verdict.LOST : Sign.Verdict.HIDDEN;
    signs.add(
        new Sign(what, part, needle, reads, dimension, n[0], n[1], n[2], "", "", verdict, seen));
  }

  private void onOrOff(Sign.What what, String part, String on, String off, String seen) {
    boolean was = healthy.is(part, on);
    boolean is = now.is(part, on);
    signs.add(
        new Sign(
            what,
            part,
            "",
            part,
            Dimension.NUMBER,
            was ? 1 : 0,
            is ? 1 : 0,
            Double.NaN,
            was ? on : off,
            is ? on : off,
            was == is ? Sign.Verdict.HIDDEN : Sign.Verdict.PLAIN,
            seen));
  }

  private void user(Part user) {
    int here = healthy.network().part(user.name());
    int there = now.network().part(user.name());
    if (there < 0 || now.network().parts().get(there).legs().isEmpty()) {
      return;
    }
    String before = healthy.doing(here, Style.SHOP).regime();
    String after = now.doing(there, Style.SHOP).regime();
    boolean changed = isShort(before) != isShort(after);
    signs.add(
        new Sign(
            Sign.What.USER,
            user.name(),
            "",
            user.name() + " flow",
            Dimension.MASS_FLOW,
            healthy.flow(here, 0),
            now.flow(there, 0),
            Double.NaN,
            before,
            after,
            changed ? Sign.Verdict.PLAIN : Sign.Verdict.HIDDEN,
            ""));
  }

  /** Whether a user in such a regime has less than it needs. */
  public static boolean isShort(String regime) {
    return regime.equals("starved") || regime.equals("low");
  }

  /** Whether a light shows what a leak loop feels; the loop itself then is not seen. */
  private boolean hasLight(String loop) {
    return healthy.network().parts().stream()
        .filter(part -> part instanceof Light)
        .flatMap(part -> part.controls().stream())
        .map(Control::rules)
        .flatMap(List::stream)
        .map(Control.Rule::when)
        .anyMatch(when -> when != null && names(when, loop));
  }

  private static boolean names(Condition when, String part) {
    return when.names().stream().anyMatch(n -> part.equals(n) || part.endsWith(" " + n));
  }

  private static Part find(Solution solution, String name) {
    return solution.network().parts().get(solution.network().part(name));
  }

  private static Optional<View> view(Solution solution, String name) {
    int number = solution.network().part(name);
    return number < 0 ? Optional.empty() : Optional.of(solution.view(number, Style.SHOP));
  }
}
