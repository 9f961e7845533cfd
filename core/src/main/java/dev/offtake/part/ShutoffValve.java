package dev.offtake.part;

import java.util.List;

/**
 * A valve that logic opens and shuts: shutoff, isolation, starter and load-control valves. Air may flow either way.
 *
 * @param command what logic makes of it: 0 shut, 1 open
 */
public record ShutoffValve(
    String name, ValveBody body, Control command, List<Parameter> parameters) implements Part {
  /** The kind. */
  public static final Kind KIND = new ShutoffKind();

  private static final int COMMAND = 1;

  /** Keeps its parameters. */
  public ShutoffValve {
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
    return new Gate(new ValveStream(wiring, body));
  }

  @Override
  public Doing doing(View view) {
    Doing held = ValveBody.held(view);
    if (held != null) {
      return held;
    }
    String because = view.because(COMMAND);
    if (view.control(COMMAND) <= 0) {
      return new Doing("shut by command", "shut", because);
    }
    String why = because.isEmpty() ? "nothing commands it shut" : because;
    return new Doing("open", "open", Openings.chokedOr(view, why));
  }

  private static final class Gate extends Element {
    private final ValveStream stream;
    private final List<Branch> branches;

    Gate(ValveStream stream) {
      this.stream = stream;
      branches = List.of(stream.branch);
    }

    @Override
    public List<Branch> branches() {
      return branches;
    }

    @Override
    public void evaluate(Evaluation e) {
      stream.pass(e, Clamp.value(stream.control(e, COMMAND)));
    }

    @Override
    public void observe(Evaluation e, double[] out, int at) {
      out[at] = stream.opening(e, Clamp.value(stream.control(e, COMMAND)));
    }
  }

  private static final class ShutoffKind implements Kind {
    private static final ValveBody.Usual USUAL =
        new ValveBody.Usual(
            "leak",
            "0..0.5 lb/min at 30 psid",
            "0.4",
            List.of("butterfly", "linear", "equal percentage"),
            "shutoff valve");

    @Override
    public String name() {
      return "shutoff valve";
    }

    @Override
    public String says() {
      return "Opens and shuts on command; isolation, starter and load-control valves are such.";
    }

    @Override
    public List<Key> keys() {
      return ValveBody.keys(
          USUAL,
          "left duct <-> right duct",
          Command.OPEN_WHEN,
          Command.SHUT_WHEN,
          Command.FED_BY,
          Command.WITHOUT_POWER);
    }

    @Override
    public String symbol() {
      return "shutoff valve";
    }

    @Override
    public List<String> removableUnits() {
      return List.of("shutoff valve");
    }

    @Override
    public Part build(Facts facts) {
      ValveBody body = ValveBody.read(facts, USUAL);
      Control command = Command.read(facts, Command.LIVE);
      return new ShutoffValve(facts.name(), body, command, body.parameters());
    }
  }
}
