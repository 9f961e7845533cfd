package dev.offtake.part;

import dev.offtake.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;

/**
 * A user with a schedule.
 *
 * @param name full name
 * @param leg from where it draws to where it discharges
 * @param parameters demand factor, wide open area, flow that it takes unasked
 * @param controls the scheduled flow, kg/s
 * @param needs pressure that it needs, Pa above the day's ambient
 * @param most largest flow of its schedule, kg/s
 */
record FlowUserPart(
    String name,
    Leg leg,
    List<Parameter> parameters,
    List<Control> controls,
    double needs,
    double most)
    implements Part {
  static final int DEMAND = 0;
  static final int AREA = 1;
  static final int LEAST = 2;

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
        List.of(demand, area(facts, most), unasked(most)),
        List.of(new Control("schedule", 0, rules)),
        facts.si("needs"),
        most);
  }

  private static Parameter unasked(double most) {
    return Parameter.exactly(UserModes.TAKES_AT_LEAST, 0, 0, most, Dimension.MASS_FLOW, "user");
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
    boolean on = asked(view) > 0;
    return switch (position) {
      case "on" -> on;
      case "off" -> !on;
      case "starved" -> on && shortfall(view) > STARVED;
      default -> false;
    };
  }

  /** Flow that it is asked for, or takes unasked. */
  private static double asked(View view) {
    return Math.max(view.control(0), view.parameter(LEAST));
  }

  private static double wanted(View view) {
    return asked(view) * view.parameter(DEMAND);
  }

  /** Share of what it wants that it does not get; all of it when it is stuck shut. */
  private static double shortfall(View view) {
    double wanted = wanted(view);
    return wanted > 0 ? 1 - view.flow(0) / wanted : 1;
  }

  @Override
  public List<Mode> modes() {
    return UserModes.scheduled(this, most);
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
    if (asked(view) <= 0) {
      return new Doing("off", "off", view.because(0));
    }
    double wanted = wanted(view);
    if (wanted <= 0) {
      String why = "it takes nothing of the " + view.massFlow(asked(view)) + " that it should";
      return new Doing("stuck shut", "stuck shut", why);
    }
    double flow = view.flow(0);
    String pressure = Tell.need(view, leg.from(), needs) + broken(view);
    if (flow < 0) {
      String word = "starved, " + view.massFlow(-flow) + " runs back";
      return new Doing("starved", word, pressure + ": short of all " + view.massFlow(wanted));
    }
    if (shortfall(view) > STARVED) {
      String word = "starved, takes " + view.massFlow(flow);
      return new Doing("starved", word, pressure + lack(view, flow, wanted));
    }
    return new Doing("fed", "takes " + view.massFlow(flow), pressure);
  }

  /** How much is missing; that it stands wide open where the pressure is not what is missing. */
  private String lack(View view, double flow, double wanted) {
    String gets = view.massFlow(flow);
    if (gets.equals(view.massFlow(0))) {
      return ": it gets none of its " + view.massFlow(wanted);
    }
    boolean pressed = view.p(leg.from()) - view.conditions().ambientP() >= needs;
    String missing = view.massFlow(wanted - flow) + " of its " + view.massFlow(wanted);
    return ": short of " + missing + (pressed ? " though wide open" : "");
  }

  private String broken(View view) {
    boolean unasked = view.parameter(LEAST) > view.control(0);
    String demand = Tell.changed(view, DEMAND, parameters.get(DEMAND), "wants", "schedule");
    return (unasked ? "; it is stuck on though nothing asks for so much" : "") + demand;
  }
}
