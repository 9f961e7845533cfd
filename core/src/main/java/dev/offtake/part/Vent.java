package dev.offtake.part;

import dev.offtake.flow.NozzleLaw;
import dev.offtake.quantity.Dimension;
import java.util.List;

/** The kind <em>vent</em>: an opening to the air outside that is meant to be there. */
public final class Vent {
  /** The kind. */
  public static final Kind KIND =
      new SimpleKind(
          "vent",
          "An opening to the air outside that is meant to be there, such as an exhaust.",
          "exhaust",
          List.of(
              Key.of("at", Form.POINT, "cooling exit", "The point that it opens.").must(),
              Key.quantity("bore", Dimension.LENGTH, "6 in", "Inner diameter.").must(),
              Key.quantity(
                      "flow coefficient",
                      Dimension.NUMBER,
                      "0.8",
                      "Share of the bore that is effective.")
                  .usually("0.8"),
              Key.of("open when", Form.CONDITION, "dump switch is OPEN", "When it is open.")),
          List.of("vent"),
          Vent::build);

  private Vent() {}

  private static Doing open(View view, Through part) {
    Doing plain = Tell.resistance(view, part.leg(), "lets out", part.parameters().get(0));
    String because = view.parameter(Through.STUCK) >= 0 ? "; " + part.because(view) : "";
    return new Doing(plain.regime(), plain.word(), plain.why() + because);
  }

  private static Part build(Facts facts) {
    Parameter area =
        Bore.parameter("flow area", facts.stated("bore"), facts.stated("flow coefficient"), "vent");
    Leg leg = new Leg(facts.point("at"), Leg.AMBIENT, facts.si("bore"), false);
    return new Through(
        facts.name(),
        KIND.name(),
        leg,
        List.of(area, Stuck.parameter("vent")),
        List.of(Commands.onWhen(facts, "open when", "open")),
        1,
        NozzleLaw::new,
        (view, part) ->
            part.open(view) == 0 ? new Doing("shut", "shut", part.because(view)) : open(view, part),
        HoleModes::vent);
  }
}
