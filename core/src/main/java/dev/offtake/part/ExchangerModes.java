package dev.offtake.part;

import dev.offtake.quantity.Dimension;
import java.util.List;

/**
 * Ways in which a {@link HeatExchanger} can fail.
 *
 * <p>Rates are orders of magnitude, assumptions; the rest is common practice, no source.
 */
final class ExchangerModes {
  private static final String UNIT = "heat exchanger";

  private static final Inspection FACE =
      new Inspection(
          "Look at the faces of the core: dust, lint, oil or bent fins",
          Access.COWLS,
          20,
          "borescope, light");

  private static final Inspection DECAY =
      new Inspection(
          "Blank its hot side, pressurise it and watch the gauge: it falls faster than its manual"
              + " allows",
          Access.BENCH,
          45,
          "blanks, gauge in calibration");

  private ExchangerModes() {}

  static List<Mode> of(Leg hot, Leg cold) {
    Extent hole = Holes.extent(hot.bore());
    Mode between =
        Mode.named(
                "leaks between its sides", UNIT, "A cracked tube or plate: hot air joins the cold")
            .extent(hole);
    Mode outward =
        Mode.named("leaks outward", UNIT, "A header, weld or flange of its hot side blows")
            .extent(hole)
            .noticed("Hissing, a hot smell or scorched paint at the core");
    return List.of(
        Mode.named("fouled", UNIT, "Dirt or oil on its surfaces: it passes less heat")
            .extent(
                new Extent("share of its heat conductance lost", Dimension.SHARE, 0.08, 0.4, 0.95))
            .puts("fouling", share -> share)
            .perMillionHours(30)
            .is(Mode.Trait.COMMON)
            .inspected(FACE),
        blocked("hot"),
        blocked("cold"),
        Holes.opens(between, "leak between its sides", hot.from(), coldInlet(cold))
            .perMillionHours(3)
            .inspected(DECAY),
        Holes.opens(outward, "outward leak", hot.from(), Leg.AMBIENT)
            .perMillionHours(3)
            .inspected(Looks.SOAP));
  }

  /** Where hot air joins the cold: before the core, so that it takes cooling away as well. */
  private static String coldInlet(Leg cold) {
    return cold.from().equals(Leg.AMBIENT) ? cold.to() : cold.from();
  }

  private static Mode blocked(String side) {
    return Mode.named(
            side + " side blocked", UNIT, "Dirt or loose pieces shut part of its " + side + " side")
        .extent(new Extent("share of its area", Dimension.SHARE, 0.05, 0.4, 0.98))
        .moves(side + " flow area", (healthy, share) -> healthy * (1 - share))
        .perMillionHours(5)
        .is(Mode.Trait.COMMON)
        .inspected(FACE);
  }
}
