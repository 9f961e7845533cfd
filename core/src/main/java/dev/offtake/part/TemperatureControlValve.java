package dev.offtake.part;

import dev.offtake.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A valve that a temperature moves: it opens (or shuts) in a straight line between two
 * temperatures.
 *
 * @param watches point whose temperature its sensor feels
 * @param opens whether it opens as it warms, else it shuts
 * @param command what logic makes of it
 * @param withoutPower {@code shuts}, {@code opens} or {@code stays}
 */
public record TemperatureControlValve(
    String name,
    ValveBody body,
    String watches,
    boolean opens,
    Control command,
    String withoutPower)
    implements Commanded {
  private static final UsualBody USUAL =
      new UsualBody("leak", "0.5", "0.4", UsualBody.LINEAR_FIRST, "valve body");

  /** The kind. */
  public static final Kind KIND =
      new SimpleKind(
          "temperature control valve",
          "Opens or shuts as a temperature rises; fan air valves of precoolers are such.",
          "temperature control valve",
          USUAL.keys(
              "fan duct -> precooler cold side",
              Key.of("watches", Form.READING, "duct temperature", "What its sensor feels.").must(),
              Key.quantity("from", Dimension.TEMPERATURE, "390 degF", "Where it begins to move.")
                  .must(),
              Key.quantity("to", Dimension.TEMPERATURE, "440 degF", "Where it ends moving.").must(),
              Key.choice("as it warms", List.of("opens", "shuts"), "Which way warm air moves it."),
              Command.SHUT_WHEN,
              Command.FED_BY,
              Command.WITHOUT_POWER),
          List.of("valve body", "linkage", "temperature sensor", "solenoid", CommandModes.WIRING),
          POSITIONS,
          TemperatureControlValve::of);

  private static final int COMMAND = 1;
  private static final int FROM = ValveBody.COUNT;
  private static final int SPAN = FROM + 1;
  private static final int FOLLOWS = SPAN + 1;
  private static final int ADDS = FOLLOWS + 1;

  private static TemperatureControlValve of(Facts facts) {
    ValveBody body = USUAL.read(facts);
    Facts.Reading reading = facts.reading("watches");
    String watches = reading == null ? body.leg().to() : reading.point();
    if (reading != null && !reading.temperature()) {
      facts.problem(
          "watches", "Its sensor feels a temperature", "Write `" + watches + " temperature`");
    }
    List<Parameter> own = new ArrayList<>(TemperatureSpan.read(facts, "temperature sensor"));
    own.addAll(TemperatureSpan.sensor("temperature sensor"));
    return new TemperatureControlValve(
        facts.name(),
        body.with(own),
        watches,
        "opens".equals(facts.choice("as it warms")),
        Command.read(facts, Command.WIDE),
        facts.choice("without power"));
  }

  @Override
  public String kind() {
    return KIND.name();
  }

  @Override
  public List<Control> controls() {
    return List.of(ValveBody.lock(), command);
  }

  @Override
  public Part obeying(Control other) {
    return new TemperatureControlValve(name, body, watches, opens, other, withoutPower);
  }

  @Override
  public List<Mode> modes() {
    return TemperatureModes.valve(this);
  }

  @Override
  public Element element(Wiring wiring) {
    int t = wiring.t(wiring.point(watches));
    return new Modulating(opens, t, new ValveStream(wiring, body, t));
  }

  @Override
  public Doing moving(View view) {
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
    double air = view.t(watches);
    double t = TemperatureSpan.feels(view, FOLLOWS, air);
    String told = TemperatureSpan.wrong(view, FOLLOWS, air);
    String at = watches + " " + view.temperature(air) + told + (told.isEmpty() ? "" : ": that");
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
    // A valve that controls is not shut, however little it is open.
    word = word.equals("shut") && view.observed(0) > 0 ? "just open" : word;
    return new Doing("controlling", word, Openings.chokedOr(view, at + " is within its " + range));
  }

  private static final class Modulating extends ValveElement {
    private final boolean opens;
    private final int slot;
    private final Lag sensor = new Lag(Lag.What.SENSOR);
    private final List<Lag> lags;

    Modulating(boolean opens, int t, ValveStream stream) {
      super(stream);
      this.opens = opens;
      slot = stream.slot(t);
      lags = Stream.concat(Stream.of(sensor), stream.lags().stream()).toList();
    }

    @Override
    public List<Lag> lags() {
      return lags;
    }

    @Override
    void slopes(Evaluation e) {
      if (stream.control(e, COMMAND) == Command.LIVE) {
        double slope =
            stream.parameter(e, FOLLOWS) * Clamp.slope(warmth(e)) / stream.parameter(e, SPAN);
        stream.movedBy(slot, sensor.slope() * (opens ? slope : -slope));
      }
    }

    @Override
    double free(Evaluation e) {
      double command = stream.control(e, COMMAND);
      // Its sensor feels the air whatever the valve is told.
      double warmth = Clamp.value(warmth(e));
      if (command != Command.LIVE) {
        return Clamp.value(command);
      }
      return opens ? warmth : 1 - warmth;
    }

    private double warmth(Evaluation e) {
      double feels =
          stream.parameter(e, FOLLOWS) * sensor.follow(stream.variable(e, slot))
              + stream.parameter(e, ADDS);
      return (feels - stream.parameter(e, FROM)) / stream.parameter(e, SPAN);
    }
  }
}
