package dev.offtake.part;

import dev.offtake.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;

/**
 * Ways in which parts fail that are no more than a hole of a size: orifices, venturis, vents, test
 * ports, joints.
 *
 * <p>Rates are orders of magnitude, assumptions; the rest is common practice, no source.
 */
final class HoleModes {
  /** How many times its area a hole may grow to, eroded or by a mix-up of parts. */
  static final double MOST_GROWTH = 4;

  private static final double SMALLEST = 0.02 * Holes.IN2;
  private static final double USUAL = 0.5 * Holes.IN2;
  private static final double LARGEST = 12 * Holes.IN2;

  private HoleModes() {}

  /** A part that dirt narrows. */
  static Mode blocked(String area, String unit) {
    return Mode.named("blocked", unit, "Dirt, a rag or a loose piece covers part of it")
        .extent(new Extent("share of its area", Dimension.SHARE, 0.05, 0.4, 0.98))
        .moves(area, (healthy, share) -> healthy * (1 - share))
        .perMillionHours(3)
        .is(Mode.Trait.COMMON)
        .inspected(Looks.BORESCOPE);
  }

  /** Modes of a hole whose size limits a flow. */
  static List<Mode> limiter(String area, String unit) {
    return List.of(
        blocked(area, unit),
        Mode.named("eroded", unit, "Its edge is worn or cracked: the hole has grown")
            .extent(new Extent("share larger", Dimension.SHARE, 0.05, 0.2, 1))
            .moves(area, (healthy, share) -> healthy * (1 + share))
            .perMillionHours(2)
            .is(Mode.Trait.COMMON)
            .inspected(Looks.MEASURE),
        wrong("too small one fitted", unit)
            .extent(new Extent("share of its area", Dimension.SHARE, 0.1, 0.6, 0.95))
            .moves(area, (healthy, share) -> healthy * share),
        wrong("too large one fitted", unit)
            .extent(new Extent("times its area", Dimension.NUMBER, 1.05, 1.5, MOST_GROWTH))
            .moves(area, (healthy, times) -> healthy * times));
  }

  private static Mode wrong(String name, String unit) {
    return Mode.named(name, unit, "One of another part number and size was fitted")
        .perMillionHours(0.5)
        .is(Mode.Trait.COMMON)
        .inspected(Looks.MEASURE);
  }

  /** Modes of an opening to the air outside. */
  static List<Mode> vent(Through part) {
    List<Mode> modes = new ArrayList<>();
    modes.add(blocked("flow area", "vent"));
    if (Stuck.commanded(part.controls().get(0))) {
      modes.add(Stuck.shut("vent", "It stays shut, whatever its switch says"));
      modes.add(Stuck.open("stuck open", "vent", "It stays open, whatever its switch says"));
    }
    return modes;
  }

  /** Modes of a plugged boss. */
  static List<Mode> plug(double hole) {
    return List.of(
        Mode.named("plug left out", "plug", "The plug or the cap was not put back: it blows")
            .puts("open area", hole)
            .perMillionHours(2)
            .noticed("A loud hiss at the port")
            .inspected(Inspection.look("Look for the plug in its boss", Access.TEST_PORT, 2)),
        Mode.named("plug leaks", "plug", "The plug is loose or its seal is gone")
            .extent(new Extent("share of its hole", Dimension.SHARE, 0.01, 0.1, 0.9))
            .puts("open area", share -> share * hole)
            .perMillionHours(5)
            .noticed("A hiss at the port")
            .inspected(Looks.SOAP));
  }

  /** Modes of a joint that is tight when healthy. */
  static List<Mode> joint(Leg leg) {
    Extent hole = Holes.extent(SMALLEST, USUAL, LARGEST);
    return List.of(
        Mode.named("leaks", "duct", "A crack or a hole, or a seal that is gone")
            .extent(hole)
            .moves("area", (healthy, area) -> healthy + area)
            .perMillionHours(5)
            .noticed("Hissing, a hot smell or scorched paint at the joint")
            .inspected(Looks.SOAP),
        Holes.looseClamp(DuctModes.CLAMP, hole, leg.from(), leg.to()),
        Holes.hotClamp(DuctModes.CLAMP, hole, leg.from(), leg.to()));
  }
}
