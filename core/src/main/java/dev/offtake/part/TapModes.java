package dev.offtake.part;

import dev.offtake.quantity.Dimension;
import java.util.List;

/**
 * Ways in which a {@link Tap} can fail.
 *
 * <p>Rates are orders of magnitude, assumptions; the rest is common practice, no source.
 */
final class TapModes {
  private static final Inspection STAGE =
      new Inspection(
          "Look at the blades and vanes of its stage: damage, dirt or rubs",
          Access.COWLS,
          60,
          "borescope, light");

  private TapModes() {}

  static List<Mode> of(Leg leg) {
    Mode flange =
        Mode.named("flange leaks", "tap", "The gasket or the bolts of its flange let air out")
            .extent(Holes.extent(leg.bore()))
            .noticed("Hissing, soot or scorched paint at the flange");
    return List.of(
        Mode.named(
                "pressure low",
                "engine",
                "Its stage is damaged, dirty or rubbed: it gives less pressure than its table")
            .extent(new Extent("share lost", Dimension.SHARE, 0.03, 0.1, 0.7))
            .moves("pressure factor", (healthy, share) -> healthy * (1 - share))
            .perMillionHours(1)
            .inspected(STAGE),
        HoleModes.blocked("flow area", "tap"),
        Holes.opens(flange, "flange leak", leg.to(), Leg.AMBIENT)
            .perMillionHours(5)
            .inspected(Looks.SOAP));
  }
}
