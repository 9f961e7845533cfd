package dev.offtake.part;

import dev.offtake.flow.DuctLaw;
import dev.offtake.quantity.Dimension;
import java.util.List;

/** The kind <em>bend</em>: a fitting known by its loss coefficient. */
public final class Bend {
  private static final double SMOOTH = 1e-6;

  /** The kind. */
  public static final Kind KIND =
      new SimpleKind(
          "bend",
          "A bend or another fitting, known by its loss coefficient.",
          "bend",
          List.of(
              Key.of("path", Form.PATH, "duct -> precooler in", "The points it joins.").must(),
              Key.quantity("bore", Dimension.LENGTH, "4 in", "Inner diameter.").must(),
              Key.quantity(
                      "loss coefficient",
                      Dimension.NUMBER,
                      "0.3",
                      "Dynamic heads lost; 0.3 is a smooth 90 degree bend.")
                  .usually("0.3"),
              Duct.zone()),
          List.of("bend", DuctModes.CLAMP),
          Bend::build);

  private Bend() {}

  private static Part build(Facts facts) {
    Facts.Path path = facts.path("path");
    Parameter area = Bore.parameter("flow area", facts.stated("bore"), "bend");
    Leg leg = new Leg(path.from(), path.to(), facts.si("bore"), true);
    double k = facts.si("loss coefficient");
    String into = facts.point(Duct.RUNS_IN);
    return Through.resistance(
        facts,
        KIND.name(),
        leg,
        area,
        1,
        () -> new DuctLaw(0, SMOOTH, k),
        part -> DuctModes.of(leg, into, "bend"));
  }
}
