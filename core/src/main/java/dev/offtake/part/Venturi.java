package dev.offtake.part;

import dev.offtake.flow.VenturiLaw;
import dev.offtake.quantity.Dimension;
import java.util.List;

/**
 * The kind <em>venturi</em>: a flow limiter that gives most of the pressure back until it chokes.
 */
public final class Venturi {
  private static final String AREA = "throat area";

  /** The kind. */
  public static final Kind KIND =
      new SimpleKind(
          "venturi",
          "Limits the flow: gives most of the pressure back until its throat chokes.",
          "venturi",
          List.of(
              Key.of("path", Form.PATH, "duct -> anti-ice duct", "The points it joins.").must(),
              Key.quantity("throat", Dimension.LENGTH, "1.6 in", "Diameter of the throat.").must(),
              Key.quantity(
                      "flow coefficient",
                      Dimension.NUMBER,
                      "0.97",
                      "Share of the throat that is effective.")
                  .usually("0.97"),
              Key.quantity(
                      "recovery",
                      Dimension.NUMBER,
                      "0.8",
                      "Share of the throat's pressure drop that comes back, 0 to 0.95.")
                  .usually("0.8"),
              Key.quantity("bore", Dimension.LENGTH, "3 in", "Inner diameter at its ends.")),
          List.of("venturi"),
          Venturi::build);

  private Venturi() {}

  private static Part build(Facts facts) {
    Facts.Path path = facts.path("path");
    Parameter throat =
        Bore.parameter(AREA, facts.stated("throat"), facts.stated("flow coefficient"), "venturi");
    Parameter area = Bore.growing(throat, HoleModes.MOST_GROWTH);
    double recovery = facts.si("recovery");
    if (!(recovery >= 0 && recovery <= 0.95)) {
      facts.problem("recovery", "it must lie between 0 and 0.95", "Give a share such as 0.8.");
      recovery = 0.8;
    }
    double share = recovery;
    double bore = facts.has("bore") ? facts.si("bore") : Double.NaN;
    Leg leg = new Leg(path.from(), path.to(), bore, path.bothWays());
    return Through.resistance(
        facts,
        KIND.name(),
        leg,
        area,
        1,
        () -> new VenturiLaw(share),
        part -> HoleModes.limiter(AREA, "venturi"));
  }
}
