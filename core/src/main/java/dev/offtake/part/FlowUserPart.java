package dev.offtake.part;

import dev.offtake.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;

/**
 * A user with a schedule.
 *
 * @param name full name
 * @param leg from where it draws to where it discharges
 * @param parameters demand factor and wide open area
 * @param controls the scheduled flow, kg/s
 * @param needs pressure that it needs, Pa above the day's ambient
 */
record FlowUserPart(
    String name, Leg leg, List<Parameter> parameters, List<Control> controls, double needs)
    implements Part {
  static final int DEMAND = 0;
  static final int AREA = 1;

  /** Shortfall, as a share of the schedule, from which a user counts as starved. */
  private static final double STARVED = 0.02;

  static Part of(Facts facts) {
    List<Control.Rule> rules = new ArrayList<>();
    double most = 0;
    double low = 1;
    double high = 1;
    for (Facts.When when : facts.whens("takes")) {
      double flow = when.value().nominal();
      String why = when.when() == null ? "always" : when.when().text();
      rules.add(new Control.Rule(when.when(), flow, why));
      if (flow > most) {
        most = flow;
        low = when.value().low() / flow;
        high = when.value().high() / flow;
      }
    }
    rules.add(new Control.Rule(null, 0, "nothing asks for air"));
    if (most <= 0) {
      facts.problem("takes", "it takes no air at any time", "Give a flow, such as 52 lb/min.");
    }
    Parameter demand = new Parameter("demand", 1, low, high, 0, 3, Dimension.NUMBER, "user");
    Leg leg = new Leg(facts.point("takes from"), facts.point("discharges to"), Double.NaN, false);
    return new FlowUserPart(
        facts.name(),
        leg,
        List.of(demand, area(facts, most)),
        List.of(new Control("schedule", 0, rules)),
        facts.si("needs"));
  }

  private static Parameter area(Facts facts, double most) {
    if (facts.has("wide open area")) {
      double given = facts.si("wide open area");
      return facts.parameter("wide open area", 0, 5 * given, "user");
    }
    facts.assume(
        "wide open area",
        "wide open it just takes its most at the pressure it needs, on a standard day");
    double area =
        most > 0
            ? most
                / WideOpen.unitFlow(
                    Math.max(facts.si("needs"), 100), facts.si("needs at temperature"))
            : 0;
    return new Parameter(
        "wide open area", area, 0.8 * area, 1.2 * area, 0, 5 * area, Dimension.AREA, "user");
  }

  @Override
  public Role role() {
    return Role.USER;
  }

  @Override
  public String kind() {
    return FlowUser.KIND.name();
  }

  @Override
  public List<Leg> legs() {
    return List.of(leg);
  }

  @Override
  public boolean is(String position, View view) {
    boolean on = view.control(0) > 0;
    return switch (position) {
      case "on" -> on;
      case "off" -> !on;
      case "starved" -> on && shortfall(view) > STARVED;
      default -> false;
    };
  }

  private static double wanted(View view) {
    return view.control(0) * view.parameter(DEMAND);
  }

  private static double shortfall(View view) {
    double wanted = wanted(view);
    return wanted > 0 ? 1 - view.flow(0) / wanted : 0;
  }

  @Override
  public List<String> observables() {
    return List.of("shortfall", "pressure above need");
  }

  @Override
  public Element element(Wiring wiring) {
    return new FlowUserElement(this, wiring);
  }

  @Override
  public Doing doing(View view) {
    if (view.control(0) <= 0) {
      return new Doing("off", "off", view.because(0));
    }
    double wanted = wanted(view);
    double flow = view.flow(0);
    String pressure = Tell.need(view, leg.from(), needs);
    if (flow < 0) {
      String word = "starved, " + view.massFlow(-flow) + " runs back";
      return new Doing("starved", word, pressure + ": short of all " + view.massFlow(wanted));
    }
    if (shortfall(view) > STARVED) {
      String word = "starved, takes " + view.massFlow(flow);
      String why =
          ": short of " + view.massFlow(wanted - flow) + " of its " + view.massFlow(wanted);
      return new Doing("starved", word, pressure + why + " though wide open");
    }
    return new Doing("fed", "takes " + view.massFlow(flow), pressure);
  }
}
