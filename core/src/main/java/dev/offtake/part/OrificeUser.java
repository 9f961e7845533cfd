package dev.offtake.part;

import dev.offtake.flow.NozzleLaw;
import dev.offtake.quantity.Dimension;
import java.util.List;

/** The kind <em>orifice user</em>: takes what its hole passes, such as an anti-ice spray tube. */
public final class OrificeUser {
  /** The kind. */
  public static final Kind KIND =
      new SimpleKind(
          "orifice user",
          "Takes what its holes pass, such as an anti-ice spray tube.",
          "user",
          List.of(
              Key.of("takes from", Form.POINT, "anti-ice duct", "Where it draws air.").must(),
              Key.quantity("bore", Dimension.LENGTH, "1.5 in", "Hole of the same area.").must(),
              Key.quantity(
                      "flow coefficient",
                      Dimension.NUMBER,
                      "0.7",
                      "Share of the hole that is effective.")
                  .usually("0.7"),
              Key.of("open when", Form.CONDITION, "wing anti-ice is ON", "When it takes air."),
              Key.quantity("needs", Dimension.GAUGE_PRESSURE, "15 psig", "Pressure it needs."),
              Key.of(
                  "discharges to",
                  Form.POINT,
                  "inlet lip",
                  "Where the air goes; outside if not said.")),
          List.of("user"),
          OrificeUser::build);

  private OrificeUser() {}

  private static Part build(Facts facts) {
    Parameter bore =
        Bore.parameter("flow area", facts.stated("bore"), facts.stated("flow coefficient"), "user");
    Parameter area = Bore.growing(bore, HoleModes.MOST_GROWTH);
    Leg leg = new Leg(facts.point("takes from"), facts.point("discharges to"), Double.NaN, false);
    double needs = facts.has("needs") ? facts.si("needs") : Double.NaN;
    return new Through(
        facts.name(),
        KIND.name(),
        leg,
        List.of(area, Stuck.parameter("user")),
        List.of(Commands.onWhen(facts, "open when", "open")),
        1,
        NozzleLaw::new,
        (view, part) -> doing(view, part, needs),
        UserModes::hole);
  }

  private static Doing doing(View view, Through part, double needs) {
    if (part.open(view) == 0) {
      return new Doing("off", "off", part.because(view));
    }
    Doing plain = taking(view, part);
    if (Double.isNaN(needs)) {
      return plain;
    }
    String from = part.leg().from();
    boolean starved = view.p(from) - view.conditions().ambientP() < needs;
    String regime = starved ? "starved" : plain.regime();
    String word = (starved ? "starved, " : "") + plain.word();
    return new Doing(regime, word, Tell.need(view, from, needs) + changed(view, part));
  }

  private static Doing taking(View view, Through part) {
    Doing plain = Tell.resistance(view, part.leg(), "takes");
    return new Doing(plain.regime(), plain.word(), plain.why() + changed(view, part));
  }

  private static String changed(View view, Through part) {
    String area = Tell.changed(view, Through.AREA, part.parameters().get(Through.AREA), "area");
    return area + (view.parameter(Through.STUCK) >= 0 ? "; " + part.because(view) : "");
  }
}
