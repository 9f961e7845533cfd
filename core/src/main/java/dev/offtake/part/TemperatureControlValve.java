package dev.offtake.part;

import dev.offtake.quantity.Dimension;
import java.util.List;

/**
 * A valve that a temperature moves: it opens (or shuts) in a straight line between two temperatures.
 *
 * @param watches point whose temperature its sensor feels
 * @param opens whether it opens as it warms, else it shuts
 * @param command what logic makes of it
 */
public record TemperatureControlValve(
    String name,
    ValveBody body,
    String watches,
    boolean opens,
    Control command,
    List<Parameter> parameters)
    implements Part {
  /** The kind. */
  public static final Kind KIND = new TemperatureControlKind();

  private static final int COMMAND = 1;
  private static final int FROM = ValveBody.COUNT;
  private static final int SPAN = FROM + 1;

  /** Keeps its parameters. */
  public TemperatureControlValve {
    parameters = List.copyOf(parameters);
  }

  @Override
  public String kind() {
    return KIND.name();
  }

  @Override
  public List<Leg> legs() {
    return List.of(body.leg());
  }

  @Override
  public List<Control> controls() {
    return List.of(ValveBody.lock(), command);
  }

  @Override
  public List<String> observables() {
    return List.of("opening");
  }

  @Override
  public Element element(Wiring wiring) {
    return new Modulating(this, wiring);
  }

  @Override
  public Doing doing(View view) {
    Doing held = ValveBody.held(view);
    if (held != null) {
      return held;
    }
    double command = view.control(COMMAND);
    if (command != Command.LIVE) {
      boolean shut = command == Command.SHUT;
      String regime = shut ? "shut by command" : "opened by command";
      return new Doing(regime, shut ? "shut" : "open", view.because(COMMAND));
    }
    return byTemperature(view);
  }

  private Doing byTemperature(View view) {
    double from = view.parameter(FROM);
    double to = from + view.parameter(SPAN);
    double t = view.t(watches);
    String at = watches + " " + view.temperature(t);
    String word = Openings.word(view.observed(0));
    if (t <= from) {
      String regime = opens ? "shut, cold" : "open, cold";
      return new Doing(regime, word, at + " is under the " + view.temperature(from));
    }
    if (t >= to) {
      String regime = opens ? "open, hot" : "shut, hot";
      return new Doing(regime, word, at + " is above the " + view.temperature(to));
    }
    String range = Openings.bare(view.temperature(from)) + " to " + view.temperature(to);
    return new Doing(
        "controlling", word, Openings.chokedOr(view, at + " is within its " + range));
  }

  private static final class Modulating extends Element {
    private final boolean opens;
    private final ValveStream stream;
    private final List<Branch> branches;
    private final int slot;

    Modulating(TemperatureControlValve valve, Wiring wiring) {
      opens = valve.opens();
      int t = wiring.t(wiring.point(valve.watches()));
      stream = new ValveStream(wiring, valve.body(), t);
      slot = stream.slot(t);
      branches = List.of(stream.branch);
    }

    @Override
    public List<Branch> branches() {
      return branches;
    }

    @Override
    public void evaluate(Evaluation e) {
      stream.pass(e, free(e));
      if (stream.control(e, COMMAND) == Command.LIVE) {
        double slope = Clamp.slope(warmth(e)) / stream.parameter(e, SPAN);
        stream.movedBy(slot, opens ? slope : -slope);
      }
    }

    @Override
    public void observe(Evaluation e, double[] out, int at) {
      out[at] = stream.opening(e, free(e));
    }

    private double free(Evaluation e) {
      double command = stream.control(e, COMMAND);
      if (command != Command.LIVE) {
        return Clamp.value(command);
      }
      double warmth = Clamp.value(warmth(e));
      return opens ? warmth : 1 - warmth;
    }

    private double warmth(Evaluation e) {
      return (stream.variable(e, slot) - stream.parameter(e, FROM)) / stream.parameter(e, SPAN);
    }
  }

  private static final class TemperatureControlKind implements Kind {
    private static final double COLDEST = 200;
    private static final double HOTTEST = 1500;
    private static final double SMALLEST_SPAN = 0.5;

    private static final ValveBody.Usual USUAL =
        new ValveBody.Usual(
            "leak",
            "0..0.5 lb/min at 30 psid",
            "0.4",
            List.of("linear", "butterfly", "equal percentage"),
            "valve body");

    @Override
    public String name() {
      return "temperature control valve";
    }

    @Override
    public String says() {
      return "Opens or shuts as a temperature rises; fan air valves of precoolers are such.";
    }

    @Override
    public List<Key> keys() {
      return ValveBody.keys(
          USUAL,
          "fan duct -> precooler cold side",
          Key.of("watches", Form.READING, "duct temperature", "What its sensor feels.").must(),
          Key.quantity("from", Dimension.TEMPERATURE, "390 degF", "Where it begins to move.")
              .must(),
          Key.quantity("to", Dimension.TEMPERATURE, "440 degF", "Where it ends moving.").must(),
          Key.choice("as it warms", List.of("opens", "shuts"), "Which way warm air moves it."),
          Command.SHUT_WHEN,
          Command.FED_BY,
          Command.WITHOUT_POWER);
    }

    @Override
    public String symbol() {
      return "temperature control valve";
    }

    @Override
    public List<String> removableUnits() {
      return List.of("valve body", "temperature sensor");
    }

    @Override
    public Part build(Facts facts) {
      ValveBody body = ValveBody.read(facts, USUAL);
      Facts.Reading reading = facts.reading("watches");
      String watches = reading == null ? body.leg().to() : reading.point();
      if (reading != null && !reading.temperature()) {
        facts.problem(
            "watches", "Its sensor feels a temperature", "Write `" + watches + " temperature`");
      }
      Parameter from = facts.parameter("from", COLDEST, HOTTEST, "temperature sensor");
      double span = facts.si("to") - from.value();
      if (span < SMALLEST_SPAN) {
        facts.problem("to", "It lies not above `from`", "Give the higher temperature as `to`");
        span = SMALLEST_SPAN;
      }
      Parameter over =
          new Parameter(
              "span",
              span,
              span,
              span,
              SMALLEST_SPAN,
              HOTTEST - COLDEST,
              Dimension.TEMPERATURE_DIFFERENCE,
              "temperature sensor");
      return new TemperatureControlValve(
          facts.name(),
          body,
          watches,
          "opens".equals(facts.choice("as it warms")),
          Command.read(facts, Command.WIDE),
          body.with(List.of(from, over)));
    }
  }
}
