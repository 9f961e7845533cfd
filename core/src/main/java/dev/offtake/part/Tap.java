package dev.offtake.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A tap of an engine: a boundary point behind a port.
 *
 * @param name full name
 * @param tapKind compressor or fan
 * @param leg from the stage to the first point
 * @param parameters pressure factor, curve between points, flow area, droop
 * @param runs 1 while the engine turns
 * @param curve pressure and temperature over corrected speed
 * @param coreFlow core flow over p/√T, kg/s √K/Pa; 0 when not known
 */
record Tap(
    String name,
    TapKind tapKind,
    Leg leg,
    List<Parameter> parameters,
    Control runs,
    TapCurve curve,
    double coreFlow)
    implements Part {
  static final int FACTOR = 0;
  static final int BETWEEN = 1;
  static final int AREA = 2;
  static final int DROOP = 3;
  static final int STAGE_P = 0;
  static final int STAGE_T = 1;
  static final int BEYOND = 2;

  /**
   * Flow from which on a state needs a fan tap, kg/s (0.5 lb/min; assumption): less is the leak of
   * a valve behind it, and cools nothing.
   */
  private static final double NEEDED = 0.5 * 0.45359237 / 60;

  /** Observable: air drawn over the air through the core; only where core flow is known. */
  static final String SHARE_OF_CORE = "share of core flow";

  static final int SHARE = 3;

  private static final List<String> ALWAYS_SEEN =
      List.of("stage pressure", "stage temperature", "speed outside the table");

  @Override
  public String kind() {
    return tapKind.name();
  }

  @Override
  public List<Leg> legs() {
    return List.of(leg);
  }

  @Override
  public List<Control> controls() {
    return List.of(runs);
  }

  @Override
  public List<String> observables() {
    if (coreFlow == 0) {
      return ALWAYS_SEEN;
    }
    List<String> all = new ArrayList<>(ALWAYS_SEEN);
    all.add(SHARE_OF_CORE);
    return List.copyOf(all);
  }

  @Override
  public List<Mode> modes() {
    return TapModes.of(leg);
  }

  @Override
  public Element element(Wiring wiring) {
    return new TapElement(this, wiring);
  }

  @Override
  public double mostPressure(Conditions conditions) {
    double ratio = curve.pressure(speed(conditions), 0);
    return conditions.inletP() * (1 + parameters.get(FACTOR).high() * (ratio - 1));
  }

  /** Corrected speed that counts for this tap, a fraction. */
  double speed(Conditions conditions) {
    return tapKind.fan() ? conditions.fanCorrected() : conditions.coreCorrected();
  }

  /**
   * Outside its table by more than 15 % of speed a tap is a guess too far. A compressor tap counts
   * even when it gives nothing, because its pressure decides who does; a fan tap only while its air
   * cools something.
   */
  @Override
  public String refuses(View view) {
    double beyond = view.observed(BEYOND);
    boolean cools = Math.abs(view.flow(0)) >= NEEDED;
    boolean idle = stopped(view) || (tapKind.fan() && !cools);
    if (idle || Math.abs(beyond) <= TapCurve.LIMIT) {
      return "";
    }
    double speed = 100 * speed(view.conditions());
    return String.format(
        Locale.ROOT,
        "its table runs from %s corrected %s speed, and %.0f %% is %.0f %% %s it; %.0f %% is as far"
            + " as a guess goes: add a row for about %.0f %% to the table, or ask at a power"
            + " nearer to it",
        curve.range(),
        tapKind.fan() ? "fan" : "core",
        speed,
        100 * Math.abs(beyond),
        beyond > 0 ? "above" : "below",
        100 * TapCurve.LIMIT,
        speed);
  }

  /** Whether the engine does not turn: nobody needs a table to know that it gives nothing. */
  private boolean stopped(View view) {
    return view.control(0) == 0 || speed(view.conditions()) == 0;
  }

  @Override
  public Doing doing(View view) {
    if (stopped(view)) {
      return new Doing("stopped", "stopped", "the engine does not turn");
    }
    double beyond = view.observed(BEYOND);
    double stage = view.observed(STAGE_P);
    double ahead = view.p(leg.to());
    String numbers =
        "stage "
            + view.gauge(stage)
            + (stage >= ahead ? " is over " : " is under ")
            + Tell.pressureOf(view, leg.to())
            + " by "
            + view.difference(Math.abs(stage - ahead))
            + outside(beyond)
            + Tell.changed(view, FACTOR, parameters.get(FACTOR), "pressure above the inlet's")
            + Tell.changed(view, AREA, parameters.get(AREA), "port area");
    double flow = view.flow(0);
    if (Math.abs(beyond) > TapCurve.LIMIT) {
      return new Doing("outside its table", "outside its table", numbers);
    }
    String guess = beyond == 0 ? "" : ", outside its table";
    if (flow < 0) {
      String much = view.massFlow(-flow);
      boolean trace = much.equals(view.massFlow(0));
      String back = trace ? "takes a trace back" : "takes back " + much;
      return new Doing("takes back", back + " into the engine" + guess, numbers);
    }
    String word = "gives " + view.massFlow(flow) + (view.choked(0) ? ", choked" : "") + guess;
    return new Doing(flow > 0 ? "gives" : "idle", word, numbers);
  }

  private String outside(double beyond) {
    if (beyond == 0) {
      return "";
    }
    return "; corrected speed is %.0f %% %s its table (%s)%s"
        .formatted(
            100 * Math.abs(beyond),
            beyond > 0 ? "above" : "below",
            curve.range(),
            Math.abs(beyond) > TapCurve.LIMIT ? ": too far for an answer" : ": a guess");
  }
}
