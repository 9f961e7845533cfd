package dev.offtake.study;

import dev.offtake.part.Facts;
import dev.offtake.part.Gauge;
import dev.offtake.part.Part;
import dev.offtake.part.View;
import dev.offtake.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What the needles of gauges show, and a test gauge at a port. */
final class NeedleSigns {
  /** Error of a test gauge, Pa (0.5 psi): an assumption. */
  private static final double TEST_GAUGE = 3447.379;

  private final TwoStates states;

  NeedleSigns(TwoStates states) {
    this.states = states;
  }

  /** A sign for each needle; none where the gauge is not there in both states. */
  List<Sign> of(Gauge gauge) {
    Optional<View> before = states.viewBefore(gauge.name());
    Optional<View> after = states.viewAfter(gauge.name());
    Optional<Part> other = states.after(gauge.name());
    List<Sign> signs = new ArrayList<>();
    if (before.isPresent() && after.isPresent() && other.orElse(null) instanceof Gauge now) {
      for (int i = 0; i < gauge.needles().size(); i++) {
        signs.add(needle(gauge, now, i, before.get(), after.get()));
      }
    }
    return signs;
  }

  private static Sign needle(Gauge gauge, Gauge now, int i, View before, View after) {
    double error = gauge.parameters().get(0).high() + gauge.each();
    double crew = gauge.temperature() ? Notice.CREW_TEMPERATURE : Notice.CREW_PRESSURE;
    Measured measured =
        new Measured(
            clamp(gauge.scale(), gauge.shows(i, before)),
            clamp(now.scale(), now.shows(i, after)),
            Math.max(2 * error, crew),
            least(gauge.step(), error));
    Facts.Needle needle = gauge.needles().get(i);
    return new Sign(
        Sign.What.NEEDLE,
        gauge.name(),
        needle.mark(),
        needle.reads().name(),
        gauge.dimension(),
        measured.was(),
        measured.is(),
        measured.limit(),
        gauge.pegged(i, before) ? Sign.PEGGED : "",
        now.pegged(i, after) ? Sign.PEGGED : "",
        measured.verdict(),
        gauge.seen());
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

  /** What a test gauge at a port shows; empty where a gauge reads its point already. */
  Optional<Sign> at(Part port) {
    String point = port.legs().get(0).from();
    boolean gauged =
        states.healthy().network().parts().stream()
            .anyMatch(part -> part instanceof Gauge gauge && reads(gauge, point));
    int number = states.healthy().network().point(point);
    int other = states.now().network().point(point);
    if (gauged || number < 0 || other < 0) {
      return Optional.empty();
    }
    Measured measured =
        new Measured(
            states.healthy().sensed(number) - states.healthy().conditions().ambientP(),
            states.now().sensed(other) - states.now().conditions().ambientP(),
            Math.max(2 * TEST_GAUGE, Notice.CREW_PRESSURE),
            TEST_GAUGE / 2);
    return Optional.of(
        new Sign(
            Sign.What.NEEDLE,
            port.name(),
            "",
            point + " pressure",
            Dimension.GAUGE_PRESSURE,
            measured.was(),
            measured.is(),
            measured.limit(),
            "",
            "",
            measured.verdict(),
            port.name()));
  }

  /** Whether a gauge shows a point's pressure, so that a test gauge there shows no more. */
  private static boolean reads(Gauge gauge, String point) {
    return gauge.needles().stream()
        .anyMatch(n -> n.reads().point().equals(point) && !n.reads().temperature());
  }
}
