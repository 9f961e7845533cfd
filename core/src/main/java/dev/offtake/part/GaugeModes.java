package dev.offtake.part;

import dev.offtake.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;

/**
 * Ways in which a {@link Gauge} can mislead.
 *
 * <p>Rates are orders of magnitude, assumptions; the rest is common practice, no source.
 */
final class GaugeModes {
  private static final String UNIT = "gauge";
  private static final String LINE = "sender line";
  private static final String SENSOR = "sensor";

  /** Reach of a scale that is not known, Pa (100 psi): an assumption. */
  private static final double USUAL_SPAN = 689475.7;

  /** Lowest and highest mark of a thermometer whose scale is not known, K (0 and 1200 °F). */
  private static final double USUAL_COLD = 255.372;

  private static final double USUAL_HOT = 922.039;

  private static final Inspection TAP_IT =
      Inspection.look(
          "Tap its glass and watch it while pressure comes and goes: it does not move",
          Access.FLIGHT_DECK,
          5);

  private static final Inspection LINE_OFF =
      new Inspection(
          "Take the line off at both ends and blow through: it is closed, or bubbles in leak fluid",
          Access.COWLS,
          20,
          "shop air, leak fluid");

  private static final Inspection SWAP =
      Inspection.look("Shut one side off and see which needle falls", Access.ENGINE_RUN, 5);

  private final Gauge gauge;
  private final List<Mode> modes = new ArrayList<>();

  GaugeModes(Gauge gauge) {
    this.gauge = gauge;
  }

  List<Mode> all() {
    modes.add(reads("reads high", "bias", 1));
    modes.add(reads("reads low", "bias", -1));
    if (gauge.needles().size() == 2) {
      modes.add(
          Mode.named("needles crossed", LINE, "Its two lines were crossed after a removal")
              .puts(Gauge.CROSSED_NAME, 1)
              .perMillionHours(0.3)
              .inspected(SWAP));
    }
    for (Facts.Needle needle : gauge.needles()) {
      needle(needle.mark());
    }
    return List.copyOf(modes);
  }

  private void needle(String mark) {
    String which = mark.isEmpty() ? "" : mark + " ";
    if (gauge.needles().size() > 1) {
      modes.add(reads(which + "needle reads high", Gauge.number(mark, Gauge.OFFSET), 1));
      modes.add(reads(which + "needle reads low", Gauge.number(mark, Gauge.OFFSET), -1));
    }
    modes.add(
        held(which + "needle stuck", UNIT, "It stays where it is, whatever it should read", mark)
            .inspected(TAP_IT));
    if (gauge.temperature()) {
      modes.add(sensor(which + "sensor drifted high", mark, 1));
      modes.add(sensor(which + "sensor drifted low", mark, -1));
      return;
    }
    modes.add(
        Mode.named(which + "sender line leaks", LINE, "Its line loses part of the pressure")
            .extent(new Extent("share of its pressure lost", Dimension.SHARE, 0.02, 0.2, 0.95))
            .puts(Gauge.number(mark, Gauge.LOSS), share -> share)
            .perMillionHours(10)
            .inspected(LINE_OFF));
    modes.add(
        held(
                which + "sender line blocked",
                LINE,
                "Water, ice or dirt closes its line: it keeps the pressure of that moment",
                mark)
            .is(Mode.Trait.COMMON)
            .inspected(LINE_OFF));
  }

  private Mode reads(String name, String number, int sign) {
    String means = "It reads " + (sign > 0 ? "more" : "less") + " than there is, everywhere alike";
    return Mode.named(name, UNIT, means)
        .extent(error())
        .puts(number, by -> sign * by)
        .perMillionHours(30)
        .inspected(Looks.TEST_GAUGE);
  }

  private Mode sensor(String name, String mark, int sign) {
    String means = "Its sensor gives a " + (sign > 0 ? "higher" : "lower") + " value than it feels";
    return Mode.named(name, SENSOR, means)
        .extent(error())
        .puts(Gauge.number(mark, Gauge.OFFSET), by -> sign * by)
        .perMillionHours(20)
        .inspected(Looks.CONTINUITY);
  }

  /** From the constant error that is still healthy to its whole span. */
  private Extent error() {
    Parameter bias = gauge.parameters().get(Gauge.BIAS);
    double least = bias.high();
    double most = bias.max();
    return new Extent(
        "by how much",
        gauge.difference(),
        least,
        Math.min(most, Math.max(4 * least, most / 20)),
        most);
  }

  private Mode held(String name, String unit, String means, String mark) {
    double least = gauge.lowest(gauge.temperature() ? USUAL_COLD : 0);
    double high = gauge.highest(gauge.temperature() ? USUAL_HOT : USUAL_SPAN);
    double most = high > least ? high : least + USUAL_SPAN;
    Extent at =
        new Extent("what it shows", gauge.dimension(), least, least + 0.4 * (most - least), most);
    return Mode.named(name, unit, means)
        .extent(at)
        .puts(Gauge.number(mark, Gauge.HELD), 1)
        .puts(Gauge.number(mark, Gauge.HELD_AT), shows -> shows)
        .perMillionHours(10);
  }
}
