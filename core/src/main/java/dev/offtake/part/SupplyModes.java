package dev.offtake.part;

import dev.offtake.quantity.Dimension;
import java.util.List;

/**
 * Ways in which a {@link Supply} can fail.
 *
 * <p>Rates are orders of magnitude, assumptions; the rest is common practice, no source.
 */
final class SupplyModes {
  static final String HOSE = "hose";
  static final String CHECK_VALVE = "supply check valve";
  private static final String UNIT = "supply";

  /** Largest hole in a hose or a check valve, m². */
  static final double MOST_AREA = 4 * Holes.IN2;

  /** Temperature that it may be off by, K: 10, 60 and 300 °F. */
  private static final double LEAST_BY = 10 / 1.8;

  private static final double USUAL_BY = 60 / 1.8;
  private static final double MOST_BY = 300 / 1.8;

  private static final Inspection GAUGE =
      Inspection.look(
          "Read its own gauges against its placard while it gives air", Access.FLIGHT_DECK, 5);

  private SupplyModes() {}

  /**
   * Modes of a supply.
   *
   * @param t its temperature, with the bounds of what is possible
   */
  static List<Mode> of(Parameter t) {
    return List.of(
        Mode.named("weak", UNIT, "It is worn or set low: it gives less pressure at every flow")
            .extent(new Extent("share of its pressure lost", Dimension.SHARE, 0.03, 0.15, 0.85))
            .moves("pressure factor", (healthy, share) -> healthy * (1 - share))
            .perMillionHours(50)
            .inspected(GAUGE),
        temperature("too hot", "It gives its air hotter than its table says", 1, t),
        temperature("too cold", "It gives its air colder than its table says", -1, t),
        Mode.named("does not come on", UNIT, "It is asked for air and gives none")
            .puts("comes on", 0)
            .perMillionHours(100)
            .inspected(GAUGE),
        Mode.named(
                "check valve leaks back",
                CHECK_VALVE,
                "Its check valve does not seat: air of the system blows back into it")
            .extent(hole())
            .puts("back leak", area -> Holes.SHARP * area)
            .perMillionHours(10)
            .noticed("Air blows out of the supply's connection or exhaust while it is off")
            .inspected(
                Inspection.look(
                    "With the supply off, feel for air at its connection while the duct has"
                        + " pressure",
                    Access.TEST_PORT,
                    5)),
        Mode.named("hose leaks", HOSE, "Its hose or coupling blows before the check valve")
            .extent(hole())
            .puts("hose leak", area -> Holes.SHARP * area)
            .perMillionHours(50)
            .noticed("Hissing along the hose")
            .inspected(
                Inspection.look("Walk along the hose while it gives air", Access.TEST_PORT, 5)));
  }

  private static Extent hole() {
    double in2 = Holes.IN2;
    return Holes.extent(0.02 * in2, 0.3 * in2, MOST_AREA / Holes.SHARP);
  }

  private static Mode temperature(String name, String means, int sign, Parameter t) {
    double room = sign > 0 ? t.max() - t.value() : t.value() - t.min();
    double most = room >= 1 ? Math.min(MOST_BY, room) : MOST_BY;
    return Mode.named(name, UNIT, means)
        .extent(
            new Extent(
                "by how much",
                Dimension.TEMPERATURE_DIFFERENCE,
                Math.min(LEAST_BY, 0.2 * most),
                Math.min(USUAL_BY, 0.5 * most),
                most))
        .moves("temperature", (healthy, by) -> healthy + sign * by)
        .perMillionHours(20)
        .inspected(GAUGE);
  }
}
