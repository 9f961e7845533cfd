package dev.offtake.part;

import dev.offtake.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;

/**
 * Ways in which a {@link Duct} or a {@link Bend} can fail.
 *
 * <p>A blocked duct is one that is crushed or lined along its way: it has less area. Rates are
 * orders of magnitude, assumptions; the rest is common practice, no source.
 */
final class DuctModes {
  /** Units of a duct that a bend has as well. */
  static final String CLAMP = "clamp";

  static final String INSULATION = "insulation";

  /** Share of the area that a forgotten plug lets by: an assumption. */
  private static final double PAST_A_PLUG = 0.002;

  /** Loss of heat that is no more than still air around the duct may make of it. */
  private static final double LEAST_TIMES = 1.1;

  private static final double MOST_TIMES = 20;

  private DuctModes() {}

  /**
   * Modes of a passage with clamps at its ends.
   *
   * @param leg its way
   * @param into point of the zone that it runs in
   * @param unit removable unit that is the passage
   */
  static List<Mode> of(Leg leg, String into, String unit) {
    String down = leg.to().equals(Leg.AMBIENT) ? leg.from() : leg.to();
    String up = leg.from().equals(Leg.AMBIENT) ? leg.to() : leg.from();
    Extent hole = Holes.extent(leg.bore());
    List<Mode> modes = new ArrayList<>();
    Mode leaks =
        Mode.named("leaks", unit, "A crack, a hole or a torn weld near its downstream end")
            .extent(hole);
    modes.add(
        Holes.opens(leaks, "leak", down, into)
            .perMillionHours(5)
            .noticed("Hissing, a hot smell or scorched paint along the " + unit)
            .inspected(Looks.SOAP));
    modes.add(Holes.looseClamp(CLAMP, hole, up, into));
    modes.add(Holes.hotClamp(CLAMP, hole, up, into));
    modes.add(
        Mode.named("blocked", unit, "It is crushed, or a loose liner or a rag narrows it")
            .extent(new Extent("share of its area", Dimension.SHARE, 0.1, 0.5, 0.98))
            .moves("flow area", (healthy, share) -> healthy * (1 - share))
            .perMillionHours(1)
            .inspected(Looks.BORESCOPE));
    modes.add(
        Mode.named("blanking plug left in", unit, "A plug was left in after a removal: nearly shut")
            .moves("flow area", (healthy, extent) -> healthy * PAST_A_PLUG)
            .perMillionHours(0.1)
            .is(Mode.Trait.COMMON)
            .inspected(Looks.BORESCOPE));
    return modes;
  }

  /**
   * The mode of lost insulation.
   *
   * @param bare how many times the heat of the insulated duct a bare one loses
   * @return none for a duct without insulation worth the name
   */
  static List<Mode> insulation(double bare) {
    if (!(bare > LEAST_TIMES)) {
      return List.of();
    }
    double usual = Math.min(bare, MOST_TIMES);
    return List.of(
        Mode.named("insulation gone", INSULATION, "Its insulation is torn off, soaked or missing")
            .extent(
                new Extent("times the heat loss", Dimension.NUMBER, LEAST_TIMES, usual, MOST_TIMES))
            .moves("heat loss", (healthy, times) -> healthy * times)
            .perMillionHours(5)
            .is(Mode.Trait.COMMON)
            .noticed("Torn blankets; scorched paint or hot skin beside the duct")
            .inspected(Inspection.look("Look along the duct for bare metal", Access.COWLS, 10)));
  }
}
