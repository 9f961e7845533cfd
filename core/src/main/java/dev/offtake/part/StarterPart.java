package dev.offtake.part;

import dev.offtake.quantity.Dimension;
import java.util.List;

/**
 * A starter of a system.
 *
 * @param name full name
 * @param leg from where it draws to the air outside
 * @param parameters nozzle area factor, torque factor, whether it is stuck
 * @param open 1 while it takes air
 * @param map effective area and torque over core speed
 * @param needs pressure that a start needs, Pa above the day's ambient
 * @param leastFlow flow that a start needs, kg/s; 0 when not known
 */
record StarterPart(
    String name,
    Leg leg,
    List<Parameter> parameters,
    Control open,
    StarterMap map,
    double needs,
    double leastFlow)
    implements Part {
  static final int NOZZLE = 0;
  static final int TORQUE = 1;
  static final int STUCK = 2;

  static Part of(Facts facts) {
    List<Parameter> parameters =
        List.of(
            factor("nozzle area", 0.97, 1.03),
            factor("torque", 0.95, 1.05),
            Stuck.parameter("starter"));
    facts.assume("map", "the map is good to 3 % in flow and 5 % in torque");
    facts.assume("map", "torque grows with the pressure above the air outside");
    return new StarterPart(
        facts.name(),
        new Leg(facts.point("takes from"), Leg.AMBIENT, Double.NaN, false),
        parameters,
        Commands.onWhen(facts, "open when", "open"),
        map(facts),
        facts.si("needs"),
        facts.has("minimum flow") ? facts.si("minimum flow") : 0);
  }

  private static Parameter factor(String name, double low, double high) {
    return new Parameter(name, 1, low, high, 0, 2, Dimension.NUMBER, "starter");
  }

  private static StarterMap map(Facts facts) {
    List<double[]> rows = facts.table("map");
    boolean sound = !rows.isEmpty();
    for (int i = 0; i < rows.size(); i++) {
      sound &= rows.get(i)[2] > 0 && (i == 0 || rows.get(i)[0] > rows.get(i - 1)[0]);
    }
    double gauge = facts.si("map pressure");
    if (!sound || !(gauge > 0)) {
      facts.problem(
          "map",
          "the map needs rows of rising speed with a flow, and a pressure above the air outside",
          "Sort the rows by speed and check \"map pressure\".");
      return new StarterMap(new double[] {0}, new double[] {0}, new double[] {1e-3}, 1e5);
    }
    double unit = WideOpen.unitFlow(gauge, facts.si("map temperature"));
    return new StarterMap(
        rows.stream().mapToDouble(row -> row[0]).toArray(),
        rows.stream().mapToDouble(row -> row[1]).toArray(),
        rows.stream().mapToDouble(row -> row[2] / unit).toArray(),
        gauge);
  }

  @Override
  public Role role() {
    return Role.USER;
  }

  @Override
  public String kind() {
    return Starter.KIND.name();
  }

  @Override
  public List<Leg> legs() {
    return List.of(leg);
  }

  @Override
  public List<Control> controls() {
    return List.of(open);
  }

  @Override
  public List<String> observables() {
    return List.of("torque");
  }

  @Override
  public Element element(Wiring wiring) {
    return new StarterElement(this, wiring);
  }

  @Override
  public List<Mode> modes() {
    return UserModes.starter(this);
  }

  @Override
  public Doing doing(View view) {
    double stuck = view.parameter(STUCK);
    if (stuck == 0) {
      boolean asked = view.control(0) > 0;
      String why = asked ? "it is stuck shut though it is asked to turn" : "it is stuck shut";
      return new Doing("stuck shut", "stuck shut", why);
    }
    if (Stuck.opening(stuck, view.control(0)) == 0) {
      return new Doing("off", "off", view.because(0));
    }
    double flow = view.flow(0);
    String why =
        Tell.need(view, leg.from(), needs)
            + "; torque %.0f %% of its map"
                .formatted(100 * view.observed(0) / map.torqueOrOne(view.conditions().core()))
            + Tell.changed(view, NOZZLE, parameters.get(NOZZLE), "nozzle area")
            + Tell.changed(view, TORQUE, parameters.get(TORQUE), "torque")
            + (stuck > 0 && view.control(0) == 0 ? "; it is stuck on though nothing asks" : "");
    boolean low = view.p(leg.from()) - view.conditions().ambientP() < needs;
    if (low || flow < leastFlow) {
      String flows = flow < leastFlow ? "; it needs " + view.massFlow(leastFlow) : "";
      return new Doing("starved", "starved, takes " + view.massFlow(flow), why + flows);
    }
    return new Doing("turns", "takes " + view.massFlow(flow), why);
  }
}
