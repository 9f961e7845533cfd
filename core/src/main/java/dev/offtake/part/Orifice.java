package dev.offtake.part;

import dev.offtake.flow.NozzleLaw;
import dev.offtake.quantity.Dimension;
import java.util.List;

/** The kind <em>orifice</em>: a hole that limits the flow. */
public final class Orifice {
  private static final String AREA = "flow area";

  /** The kind. */
  public static final Kind KIND =
      new SimpleKind(
          "orifice",
          "A hole that limits the flow between two points.",
          "orifice",
          List.of(
              Key.of("path", Form.PATH, "duct -> plenum", "The points it joins.").must(),
              Key.quantity("bore", Dimension.LENGTH, "0.5 in", "Diameter of the hole.").must(),
              Key.quantity(
                      "flow coefficient",
                      Dimension.NUMBER,
                      "0.6",
                      "Share of the hole that is effective; 0.6 is sharp-edged.")
                  .usually("0.6")),
          List.of("orifice"),
          Orifice::build);

  private Orifice() {}

  private static Part build(Facts facts) {
    Facts.Path path = facts.path("path");
    Parameter bore =
        Bore.parameter(AREA, facts.stated("bore"), facts.stated("flow coefficient"), "orifice");
    Parameter area = Bore.growing(bore, HoleModes.MOST_GROWTH);
    Leg leg = new Leg(path.from(), path.to(), Double.NaN, true);
    return Through.resistance(
        facts,
        KIND.name(),
        leg,
        area,
        1,
        NozzleLaw::new,
        part -> HoleModes.limiter(AREA, "orifice"));
  }
}
