package dev.offtake.part;

import dev.offtake.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;

/**
 * A valve that logic opens and shuts: shutoff, isolation, starter and load-control valves. Air may
 * flow either way.
 *
 * @param command what logic makes of it: 0 shut, 1 open
 * @param withoutPower {@code shuts}, {@code opens} or {@code stays}
 */
public record ShutoffValve(String name, ValveBody body, Control command, String withoutPower)
    implements Commanded {
  private static final String UNIT = "shutoff valve";
  private static final String SWITCH = "position switch";

  private static final UsualBody USUAL =
      new UsualBody("leak", "0.5", "0.4", UsualBody.BUTTERFLY_FIRST, UNIT);

  /** The kind. */
  public static final Kind KIND =
      new SimpleKind(
          "shutoff valve",
          "Opens and shuts on command; isolation, starter and load-control valves are such.",
          "shutoff valve",
          USUAL.keys(
              "left duct <-> right duct",
              Command.OPEN_WHEN,
              Command.SHUT_WHEN,
              Command.FED_BY,
              Command.WITHOUT_POWER),
          List.of(UNIT, "actuator", SWITCH, CommandModes.WIRING),
          POSITIONS,
          ShutoffValve::of);

  private static final int COMMAND = 1;

  /** Parameter: opening that its position switch tells; {@link ValveBody#FREE} for the true one. */
  private static final int TOLD = ValveBody.COUNT;

  private static final Inspection SWITCH_CHECK =
      new Inspection(
          "Move the valve by hand to each stop and watch what its switch tells",
          Access.COWLS,
          15,
          "multimeter");

  private static ShutoffValve of(Facts facts) {
    double free = ValveBody.FREE;
    Parameter told =
        new Parameter("position told", free, free, free, free, 1, Dimension.SHARE, SWITCH);
    return new ShutoffValve(
        facts.name(),
        USUAL.read(facts).with(List.of(told)),
        Command.read(facts, Command.LIVE),
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
    return new ShutoffValve(name, body, other, withoutPower);
  }

  @Override
  public double tells(View view) {
    double told = view.parameter(TOLD);
    return told >= 0 ? told : view.observed(0);
  }

  @Override
  public List<Mode> modes() {
    List<Mode> modes = new ArrayList<>(BodyModes.of(body, UNIT));
    modes.addAll(CommandModes.of(this, "actuator", Command.LIVE));
    modes.add(
        switched("out of adjustment", "Its switch closes at neither stop", 0.5)
            .perMillionHours(20));
    modes.add(switched("failed at open", "Its switch always tells open", 1).perMillionHours(5));
    modes.add(switched("failed at shut", "Its switch always tells shut", 0).perMillionHours(5));
    return modes;
  }

  private static Mode switched(String how, String means, double tells) {
    return Mode.named(SWITCH + " " + how, SWITCH, means)
        .puts("position told", tells)
        .noticed("Its light does not agree with its switch")
        .inspected(SWITCH_CHECK);
  }

  @Override
  public Element element(Wiring wiring) {
    return new Gate(new ValveStream(wiring, body));
  }

  @Override
  public Doing moving(View view) {
    double told = view.parameter(TOLD);
    Doing does = commanded(view);
    return told < 0
        ? does
        : new Doing(
            does.regime(), does.word(), does.why() + "; its position switch tells " + told(told));
  }

  private static String told(double told) {
    return told <= 0 ? "shut" : told >= 1 ? "open" : "neither stop";
  }

  private Doing commanded(View view) {
    String because = view.because(COMMAND);
    if (view.control(COMMAND) <= 0) {
      return new Doing("shut by command", "shut", because);
    }
    String why = because.isEmpty() ? "nothing commands it shut" : because;
    return new Doing("open", "open", Openings.chokedOr(view, why));
  }

  private static final class Gate extends ValveElement {
    Gate(ValveStream stream) {
      super(stream);
    }

    @Override
    double free(Evaluation e) {
      return Clamp.value(stream.control(e, COMMAND));
    }
  }
}
