package dev.offtake.part;

import dev.offtake.air.GasState;
import dev.offtake.flow.Flow;
import dev.offtake.flow.NozzleLaw;
import dev.offtake.quantity.Dimension;
import java.util.List;

/**
 * The kind <em>dead-ended user</em>: needs pressure but hardly any air, such as a tank that is held
 * up.
 */
public final class DeadEndedUser {
  /** Largest leak that is looked for, m² (0.5 in²): an assumption. */
  private static final double LARGEST = 0.5 * 0.0254 * 0.0254;

  /** The kind. */
  public static final Kind KIND =
      new SimpleKind(
          "dead-ended user",
          "Needs pressure but hardly any air, such as a tank that is kept under pressure.",
          "tank",
          List.of(
              Key.of("takes from", Form.POINT, "duct", "Where its line comes from.").must(),
              Key.quantity("needs", Dimension.GAUGE_PRESSURE, "10 psig", "Pressure that it needs.")
                  .must(),
              Key.at(
                  "leaks",
                  Dimension.MASS_FLOW,
                  Dimension.GAUGE_PRESSURE,
                  "0..0.1 lb/min at 30 psig",
                  "Air that it loses; none when not said.")),
          List.of("user"),
          DeadEndedUser::build);

  private DeadEndedUser() {}

  private static Part build(Facts facts) {
    Leg leg = new Leg(facts.point("takes from"), Leg.AMBIENT, Double.NaN, false);
    double needs = facts.si("needs");
    return new Through(
        facts.name(),
        KIND.name(),
        leg,
        List.of(leak(facts)),
        List.of(),
        1,
        NozzleLaw::new,
        (view, part) -> doing(view, part, needs),
        part -> UserModes.deadEnded(LARGEST));
  }

  private static Parameter leak(Facts facts) {
    double value = 0;
    double low = 0;
    double high = 0;
    if (facts.has("leaks")) {
      Facts.At at = facts.at("leaks");
      double unit = unitFlow(at.at().nominal());
      value = at.value().nominal() / unit;
      low = at.value().low() / unit;
      high = at.value().high() / unit;
    }
    return new Parameter(
        "leak", value, low, high, 0, Math.max(LARGEST, high), Dimension.AREA, "user");
  }

  /** Flow of one square metre at a gauge pressure on the standard day, kg/(s m²). */
  private static double unitFlow(double gauge) {
    GasState one = new GasState();
    GasState two = new GasState();
    one.set(Math.log((101325 + Math.max(gauge, 100)) / 1e5), Conditions.REFERENCE_T);
    two.set(Math.log(101325 / 1e5), Conditions.REFERENCE_T);
    Flow flow = new Flow();
    new NozzleLaw().evaluate(one, two, 1, flow);
    return flow.mdot;
  }

  private static Doing doing(View view, Through part, double needs) {
    String from = part.leg().from();
    double room = view.p(from) - view.conditions().ambientP() - needs;
    String word = room >= 0 ? "held up" : "low";
    boolean leaks = view.parameter(0) > part.parameters().get(0).high();
    String loses = leaks ? "; it loses " + view.massFlow(view.flow(0)) : "";
    return new Doing(word, word, Tell.need(view, from, needs) + loses);
  }
}
