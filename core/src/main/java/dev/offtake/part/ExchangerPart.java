package dev.offtake.part;

import dev.offtake.air.GasState;
import dev.offtake.flow.Flow;
import dev.offtake.flow.NozzleLaw;
import dev.offtake.heat.Exchanger;
import dev.offtake.heat.RatedPoint;
import dev.offtake.quantity.Dimension;
import java.util.List;
import java.util.Locale;

/**
 * A heat exchanger of a system.
 *
 * @param name full name
 * @param legs hot way, cold way
 * @param parameters fouling, hot flow area, cold flow area
 * @param law heat of the core
 */
record ExchangerPart(String name, List<Leg> legs, List<Parameter> parameters, Exchanger law)
    implements Part {
  static final int FOULING = 0;
  static final int HOT_AREA = 1;
  static final int COLD_AREA = 2;
  static final int HEAT = 0;

  private static final String UNIT = "heat exchanger";

  static Part of(Facts facts) {
    Parameter fouling = new Parameter("fouling", 0, 0, 0.05, 0, 0.95, Dimension.SHARE, UNIT);
    facts.assume("fouling", "a healthy core may be fouled by up to 5 %");
    return new ExchangerPart(
        facts.name(),
        List.of(leg(facts, "hot"), leg(facts, "cold")),
        List.of(fouling, area(facts, "hot"), area(facts, "cold")),
        law(facts));
  }

  private static Leg leg(Facts facts, String side) {
    Facts.Path path = facts.path(side + " path");
    String bore = side + " bore";
    double diameter = facts.has(bore) ? facts.si(bore) : Double.NaN;
    return new Leg(path.from(), path.to(), diameter, path.bothWays());
  }

  private static Exchanger law(Facts facts) {
    try {
      return new RatedPoint(
              facts.si("rated hot flow"),
              facts.si("rated hot inlet"),
              facts.si("rated hot outlet"),
              facts.si("rated cold flow"),
              facts.si("rated cold inlet"))
          .exchanger(facts.si("exponent"));
    } catch (IllegalArgumentException wrong) {
      facts.problem(
          "rated hot outlet", String.valueOf(wrong.getMessage()), "Check the five rated values.");
      return Exchanger.rated(1000, 1, 1);
    }
  }

  /** Effective area of a side: that of a nozzle with the rated pressure drop at the rated flow. */
  private static Parameter area(Facts facts, String side) {
    double p = Conditions.standardDay(1, 1).ambientP() + facts.si("rated " + side + " pressure");
    double drop = facts.si(side + " pressure drop");
    double area = 1e-3;
    if (drop > 0 && drop < 0.5 * p) {
      GasState one = new GasState();
      GasState two = new GasState();
      double t = facts.si("rated " + side + " inlet");
      one.set(Math.log(p / 1e5), t);
      two.set(Math.log((p - drop) / 1e5), t);
      Flow flow = new Flow();
      new NozzleLaw().evaluate(one, two, 1, flow);
      area = facts.si("rated " + side + " flow") / flow.mdot;
    } else {
      facts.problem(
          side + " pressure drop",
          "it must be above zero and below half of the inlet pressure",
          "Give the loss at the rated flow, such as 2 psid.");
    }
    String name = side + " flow area";
    return new Parameter(name, area, 0.9 * area, 1.1 * area, 0, 2 * area, Dimension.AREA, UNIT);
  }

  @Override
  public String kind() {
    return HeatExchanger.KIND.name();
  }

  @Override
  public List<String> observables() {
    return List.of("heat", "hot outlet temperature", "cold outlet temperature");
  }

  @Override
  public List<Mode> modes() {
    return ExchangerModes.of(legs.get(0), legs.get(1));
  }

  @Override
  public Element element(Wiring wiring) {
    return new ExchangerElement(this, wiring);
  }

  private String broken(View view) {
    double fouling = view.parameter(FOULING);
    String fouled =
        fouling > parameters.get(FOULING).high()
            ? String.format(
                Locale.ROOT, "; fouled: %.0f %% of its heat conductance is lost", 100 * fouling)
            : "";
    return fouled
        + Tell.changed(view, HOT_AREA, parameters.get(HOT_AREA), "hot side's area")
        + Tell.changed(view, COLD_AREA, parameters.get(COLD_AREA), "cold side's area");
  }

  @Override
  public Doing doing(View view) {
    double hot = view.flow(0);
    double cold = view.flow(1);
    Leg hotLeg = legs.get(0);
    Leg coldLeg = legs.get(1);
    double hotIn = view.t(hot >= 0 ? hotLeg.from() : hotLeg.to());
    double coldIn = view.t(cold >= 0 ? coldLeg.from() : coldLeg.to());
    String sides =
        view.massFlow(hot)
            + " of "
            + view.temperature(hotIn)
            + " air against "
            + view.massFlow(cold)
            + " of "
            + view.temperature(coldIn)
            + " air"
            + broken(view);
    double heat = view.observed(HEAT);
    if (Math.abs(heat) < 1) {
      return new Doing("still", "no heat", sides + ": nothing to exchange");
    }
    String out = view.temperature(view.observed(1));
    return heat > 0
        ? new Doing("cools", "cools to " + out, sides)
        : new Doing("heats", "heats to " + out, sides + ": the cold side is the hotter one");
  }
}
