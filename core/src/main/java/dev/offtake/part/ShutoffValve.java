package dev.offtake.part;

import java.util.List;

/**
 * A valve that logic opens and shuts: shutoff, isolation, starter and load-control valves. Air may
 * flow either way.
 *
 * @param command what logic makes of it: 0 shut, 1 open
 */
public record ShutoffValve(String name, ValveBody body, Control command) implements Valve {
  private static final UsualBody USUAL =
      new UsualBody("leak", "0.5", "0.4", UsualBody.BUTTERFLY_FIRST, "shutoff valve");

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
          List.of("shutoff valve"),
          ShutoffValve::of);

  private static final int COMMAND = 1;

  private static ShutoffValve of(Facts facts) {
    ValveBody body = USUAL.read(facts);
    return new ShutoffValve(facts.name(), body, Command.read(facts, Command.LIVE));
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
  public Element element(Wiring wiring) {
    return new Gate(new ValveStream(wiring, body));
  }

  @Override
  public Doing moving(View view) {
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
