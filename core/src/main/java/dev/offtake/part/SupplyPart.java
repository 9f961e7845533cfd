package dev.offtake.part;

import dev.offtake.quantity.Dimension;
import java.util.List;

/**
 * A supply of a system.
 *
 * @param name full name
 * @param leg from the unit to the first point
 * @param parameters pressure factor, temperature, crack pressure, whether it comes on, effective
 *     areas by which its check valve leaks back and its hose leaks
 * @param on 1 while it gives air
 * @param curve flow over gauge pressure
 * @param mostPressure limit of the receiver, Pa gauge; NaN when not known
 * @param mostTemperature limit of the receiver, K; NaN when not known
 */
record SupplyPart(
    String name,
    Leg leg,
    List<Parameter> parameters,
    Control on,
    SupplyCurve curve,
    double mostPressure,
    double mostTemperature)
    implements Part {
  static final int FACTOR = 0;
  static final int TEMPERATURE = 1;
  static final int CRACK = 2;
  static final int COMES_ON = 3;
  static final int BACK_LEAK = 4;
  static final int HOSE_LEAK = 5;

  /** Flow back from which on a check valve is said to leak, kg/s (0.05 lb/min). */
  private static final double LEAST_BACK = 0.05 * 0.45359237 / 60;

  /** Share of the table's largest flow under which the supply counts as deadheaded. */
  private static final double DEADHEADED = 0.02;

  static Part of(Facts facts) {
    List<Parameter> parameters =
        List.of(
            new Parameter("pressure factor", 1, 1, 1, 0.1, 1.3, Dimension.NUMBER, "supply"),
            facts.parameter("temperature", 220, 900, "supply"),
            facts.parameter("check valve cracks at", 0, 1e5, SupplyModes.CHECK_VALVE),
            Parameter.exactly("comes on", 1, 0, 1, Dimension.NUMBER, "supply"),
            leak("back leak", SupplyModes.CHECK_VALVE),
            leak("hose leak", SupplyModes.HOSE));
    double bore = facts.has("bore") ? facts.si("bore") : Double.NaN;
    return new SupplyPart(
        facts.name(),
        new Leg("", facts.point("to"), bore, false),
        parameters,
        Commands.onWhen(facts, "on when", "on"),
        curve(facts),
        limit(facts, "at most pressure"),
        limit(facts, "at most temperature"));
  }

  private static Parameter leak(String name, String unit) {
    return Parameter.exactly(name, 0, 0, SupplyModes.MOST_AREA, Dimension.AREA, unit);
  }

  private static double limit(Facts facts, String key) {
    return facts.has(key) ? facts.si(key) : Double.NaN;
  }

  private static SupplyCurve curve(Facts facts) {
    List<double[]> rows = facts.table("table");
    double[] pressure = rows.stream().mapToDouble(row -> row[0]).toArray();
    double[] flow = rows.stream().mapToDouble(row -> row[1]).toArray();
    boolean sound = rows.size() >= 2 && flow[0] >= 0;
    for (int i = 1; i < rows.size(); i++) {
      sound &= pressure[i] < pressure[i - 1] && flow[i] > flow[i - 1];
    }
    if (sound) {
      return new SupplyCurve(pressure, flow);
    }
    facts.problem(
        "table",
        "a supply needs two rows or more whose pressure falls strictly as the flow rises",
        "Sort by flow and leave out rows left of the peak: there its surge valve dumps the rest.");
    return new SupplyCurve(new double[] {3e5, 1e5}, new double[] {0, 1});
  }

  @Override
  public String kind() {
    return Supply.KIND.name();
  }

  @Override
  public List<Leg> legs() {
    return List.of(leg);
  }

  @Override
  public List<Control> controls() {
    return List.of(on);
  }

  @Override
  public double mostPressure(Conditions conditions) {
    return conditions.ambientP() + curve.deadhead() * parameters.get(FACTOR).high();
  }

  @Override
  public boolean is(String position, View view) {
    boolean on = view.control(0) > 0 && view.parameter(COMES_ON) > 0;
    return position.equals(on ? "on" : "off");
  }

  @Override
  public List<Mode> modes() {
    return SupplyModes.of(parameters.get(TEMPERATURE));
  }

  @Override
  public Element element(Wiring wiring) {
    return new SupplyElement(this, wiring);
  }

  @Override
  public Doing doing(View view) {
    double ahead = view.p(leg.to());
    double flow = view.flow(0);
    boolean silent = view.parameter(COMES_ON) == 0;
    if (view.parameter(BACK_LEAK) > 0 && flow < -LEAST_BACK) {
      String why = Tell.pressureOf(view, leg.to()) + " blows through its leaking check valve";
      return new Doing("takes back", "takes back " + view.massFlow(-flow), why);
    }
    if (view.control(0) == 0 || silent) {
      String why = silent ? "it does not come on" : view.because(0);
      return new Doing("off", "off", why);
    }
    double deadhead = curve.deadhead() * view.parameter(FACTOR);
    String most = "it gives " + view.gaugeOf(deadhead) + " without flow" + broken(view);
    if (flow <= DEADHEADED * curve.most()) {
      String why =
          Tell.pressureOf(view, leg.to())
              + " holds its check valve: "
              + most
              + "; all of its air goes through its own surge or load valve";
      return new Doing("deadheaded", "deadheaded", why);
    }
    String over = overLimit(view, ahead);
    String beyond = flow > curve.most() ? "; more than its table knows, a guess" : "";
    String regime = over.isEmpty() ? beyond.isEmpty() ? "gives" : "overdrawn" : "over limit";
    String why = most + ", " + Tell.pressureOf(view, leg.to()) + " takes the rest" + beyond + over;
    return new Doing(regime, "gives " + view.massFlow(flow), why);
  }

  private String broken(View view) {
    double hose = view.parameter(HOSE_LEAK);
    String hot = view.temperature(parameters.get(TEMPERATURE).value());
    boolean sound =
        view.parameter(TEMPERATURE) >= parameters.get(TEMPERATURE).low()
            && view.parameter(TEMPERATURE) <= parameters.get(TEMPERATURE).high();
    return Tell.changed(view, FACTOR, parameters.get(FACTOR), "pressure")
        + (sound
            ? ""
            : "; its air has " + view.temperature(view.parameter(TEMPERATURE)) + ", not " + hot)
        + (hose > 0 ? "; its hose leaks, " + view.print(hose, Dimension.AREA) + " effective" : "");
  }

  private String overLimit(View view, double ahead) {
    StringBuilder text = new StringBuilder();
    if (ahead - view.conditions().ambientP() > mostPressure) {
      text.append("; OVER its limit of ").append(view.gaugeOf(mostPressure));
    }
    if (view.parameter(TEMPERATURE) > mostTemperature) {
      text.append("; ")
          .append(view.temperature(view.parameter(TEMPERATURE)))
          .append(" is OVER its limit of ")
          .append(view.temperature(mostTemperature));
    }
    return text.toString();
  }
}
