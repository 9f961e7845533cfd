package dev.offtake.part;

import dev.offtake.air.GasState;
import dev.offtake.flow.FlowLaw;
import java.util.List;
import java.util.function.Supplier;

/**
 * A part that is one flow law between two points. Its first parameter is the law's area, its first
 * control (if it has one) opens it.
 *
 * @param name full name
 * @param kind name of the kind
 * @param leg the only way through
 * @param parameters the area, m², and what the law's words need
 * @param controls none, or one that is 1 when open and 0 when shut
 * @param effective share of the area that is effective
 * @param law makes the law; one for each network, since a law may keep a warm start
 * @param words what the part is doing
 * @param failing how the part can fail
 */
record Through(
    String name,
    String kind,
    Leg leg,
    List<Parameter> parameters,
    List<Control> controls,
    double effective,
    Supplier<? extends FlowLaw> law,
    Words words,
    Failing failing)
    implements Part {
  /** Position of the area among the parameters. */
  static final int AREA = 0;

  /** Position of {@link Stuck#parameter} among the parameters of a part that has one. */
  static final int STUCK = 1;

  /** Tells what the part is doing. */
  @FunctionalInterface
  interface Words {
    Doing tell(View view, Through part);
  }

  /** Tells how the part can fail. */
  @FunctionalInterface
  interface Failing {
    List<Mode> modes(Through part);
  }

  /** An always open part that resists the flow. */
  static Through resistance(
      Facts facts,
      String kind,
      Leg leg,
      Parameter area,
      double effective,
      Supplier<? extends FlowLaw> law,
      Failing failing) {
    return new Through(
        facts.name(),
        kind,
        leg,
        List.of(area),
        List.of(),
        effective,
        law,
        (view, part) -> Tell.resistance(view, part.leg(), "passes", part.parameters().get(AREA)),
        failing);
  }

  /** An orifice user is for using air; every other hole or bend only lets it through. */
  @Override
  public Role role() {
    return kind.equals(OrificeUser.KIND.name()) ? Role.USER : Part.super.role();
  }

  @Override
  public List<Leg> legs() {
    return List.of(leg);
  }

  @Override
  public Element element(Wiring wiring) {
    return new Work(this, wiring);
  }

  @Override
  public List<Mode> modes() {
    return failing.modes(this);
  }

  @Override
  public Doing doing(View view) {
    return words.tell(view, this);
  }

  /** Whether it is open: what commands it, unless it is stuck. */
  double open(View view) {
    boolean sticks = parameters.size() > STUCK;
    double commanded = view.control(0);
    return sticks ? Stuck.opening(view.parameter(STUCK), commanded) : commanded;
  }

  /** Why it is open or shut. */
  String because(View view) {
    boolean stuck = parameters.size() > STUCK && view.parameter(STUCK) >= 0;
    if (!stuck) {
      return view.because(0);
    }
    String word = view.parameter(STUCK) > 0 ? "open" : "shut";
    return "it is stuck " + word + " and no longer follows its command";
  }

  private static final class Work extends HoleElement {
    private final int parameters;
    private final int control;
    private final int stuck;
    private final double effective;

    Work(Through part, Wiring wiring) {
      super(part.leg, wiring, part.law.get(), part.effective * part.parameters.get(AREA).value());
      parameters = wiring.parameters();
      control = part.controls.isEmpty() ? -1 : wiring.controls();
      stuck = part.parameters.size() > STUCK ? parameters + STUCK : -1;
      effective = part.effective;
    }

    @Override
    double wide(Evaluation e) {
      return effective * e.parameters[parameters + AREA];
    }

    @Override
    double opening(Evaluation e, GasState from) {
      double commanded = control < 0 ? 1 : e.controls[control];
      return stuck < 0 ? commanded : Stuck.opening(e.parameters[stuck], commanded);
    }
  }
}
