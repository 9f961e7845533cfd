package dev.offtake.part;

import dev.offtake.flow.NozzleLaw;
import dev.offtake.quantity.Dimension;
import java.util.List;

/**
 * The kind <em>test port</em>: a plugged boss where a gauge can be fitted; it blows when the plug
 * is left out.
 */
public final class TestPort {
  /**
   * Share of the port's bore that is effective when it is open: a sharp-edged hole, an assumption.
   */
  private static final double EFFECTIVE = 0.6;

  /** The kind. */
  public static final Kind KIND =
      new SimpleKind(
          "test port",
          "A plugged boss where a gauge can be fitted. It blows when the plug is left out.",
          "test point",
          List.of(
              Key.of("at", Form.POINT, "interstage", "The point that it opens.").must(),
              Key.quantity("bore", Dimension.LENGTH, "0.25 in", "Diameter of the hole.")
                  .usually("0.25 in")),
          List.of("plug"),
          TestPort::build);

  private TestPort() {}

  private static Part build(Facts facts) {
    double hole = Bore.area(facts.stated("bore").high());
    Parameter area = new Parameter("open area", 0, 0, 0, 0, hole, Dimension.AREA, "plug");
    Leg leg = new Leg(facts.point("at"), Leg.AMBIENT, Double.NaN, false);
    return new Through(
        facts.name(),
        KIND.name(),
        leg,
        List.of(area),
        List.of(),
        EFFECTIVE,
        NozzleLaw::new,
        (view, part) ->
            view.parameter(0) == 0
                ? new Doing("plugged", "plugged", Tell.pressureOf(view, part.leg().from()))
                : Tell.resistance(view, part.leg(), "blows"),
        part -> HoleModes.plug(hole));
  }
}
