package dev.offtake.part;

import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Stated;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A flapper or poppet that opens with the flow and shuts against it.
 *
 * <p>Opening = (Δp − crack)/(full − crack) between 0 and 1, where Δp is the total pressure ahead
 * less that behind; fitted backwards, the other way round.
 */
public record CheckValve(String name, ValveBody body) implements Valve {
  private static final UsualBody USUAL =
      new UsualBody("back leak", "0.1", "0.7", UsualBody.LINEAR_FIRST, "check valve");

  /** The kind. */
  public static final Kind KIND =
      new SimpleKind(
          "check valve",
          "Lets air pass one way and shuts against the other.",
          "check valve",
          USUAL.keys(
              "mid duct -> interstage",
              Key.quantity(
                      "cracks at",
                      Dimension.PRESSURE_DIFFERENCE,
                      "0.3 psid",
                      "Pressure difference at which it begins to open.")
                  .usually("0.5 psid"),
              Key.quantity(
                  "full at",
                  Dimension.PRESSURE_DIFFERENCE,
                  "0.8 psid",
                  "Pressure difference at which it is wide open; 0.5 psi above cracking if not"
                      + " said.")),
          List.of("check valve"),
          POSITIONS,
          CheckValve::of);

  /** From cracking to wide open when a file does not say, Pa (0.5 psi; common practice). */
  private static final double USUAL_STROKE = 0.5 * 6894.757293168;

  /** Smallest difference between cracking and wide open, Pa. */
  private static final double SMALLEST_STROKE = 50;

  private static final double MOST = 2e5;

  private static final int CRACK = ValveBody.COUNT;
  private static final int FULL = CRACK + 1;
  private static final int FITTED = FULL + 1;

  /** Which way round it is fitted. */
  private static final Parameter FORWARD =
      Parameter.exactly("fitted", 1, -1, 1, Dimension.NUMBER, "check valve");

  private static CheckValve of(Facts facts) {
    Parameter crack = facts.parameter("cracks at", 0, MOST, "check valve");
    Parameter stroke = stroke(facts, crack.value());
    return new CheckValve(facts.name(), USUAL.read(facts).with(List.of(crack, stroke, FORWARD)));
  }

  private static Parameter stroke(Facts facts, double crack) {
    @Nullable Stated full = facts.has("full at") ? facts.stated("full at") : null;
    double value = full == null ? USUAL_STROKE : full.nominal() - crack;
    if (full == null) {
      facts.assume("full at", "it is wide open 0.5 psi above cracking");
    } else if (value < SMALLEST_STROKE) {
      facts.problem(
          "full at",
          "It cannot be wide open before it cracks",
          "Give a pressure difference above `cracks at`");
      value = USUAL_STROKE;
    }
    return Parameter.exactly(
        "stroke", value, SMALLEST_STROKE, MOST, Dimension.PRESSURE_DIFFERENCE, "check valve");
  }

  @Override
  public String kind() {
    return KIND.name();
  }

  @Override
  public List<Control> controls() {
    return List.of(ValveBody.lock());
  }

  @Override
  public List<Mode> modes() {
    return CheckValveModes.of(body);
  }

  @Override
  public Element element(Wiring wiring) {
    return new Flapper(new ValveStream(wiring, body));
  }

  @Override
  public Doing moving(View view) {
    double ahead = view.p(body.leg().from());
    double behind = view.p(body.leg().to());
    if (view.parameter(FITTED) < 0) {
      return backwards(view, behind - ahead);
    }
    double drop = ahead - behind;
    if (drop < 0) {
      return new Doing("shut", "shut", Openings.heldFromBehind(view, ahead, behind));
    }
    if (drop <= view.parameter(CRACK)) {
      String why = "%s across it, it cracks at %s";
      return new Doing("shut", "shut", print(why, view, drop, view.parameter(CRACK)));
    }
    String why = print("%s push it open, it is wide open at %s", view, drop, full(view));
    String regime = drop >= full(view) ? "open" : "partly open";
    String word = Openings.word(view.observed(0));
    return new Doing(regime, word, Openings.chokedOr(view, why));
  }

  private Doing backwards(View view, double drop) {
    boolean opens = drop > view.parameter(CRACK);
    String word = opens ? Openings.word(view.observed(0)) : "shut";
    String why = "fitted backwards: it opens against its path, " + view.difference(drop);
    return new Doing(opens ? "open backwards" : "shut backwards", word, why + " that way");
  }

  private static double full(View view) {
    return view.parameter(CRACK) + view.parameter(FULL);
  }

  private static String print(String words, View view, double one, double two) {
    return String.format(words, view.difference(one), view.difference(two));
  }

  private static final class Flapper extends ValveElement {
    Flapper(ValveStream stream) {
      super(stream);
    }

    @Override
    double free(Evaluation e) {
      return Clamp.value(stroke(e));
    }

    @Override
    void slopes(Evaluation e) {
      double slope =
          stream.parameter(e, FITTED) * Clamp.slope(stroke(e)) / stream.parameter(e, FULL);
      stream.movedBy(Branch.LN_P_FROM, slope * stream.p(e, Branch.LN_P_FROM));
      stream.movedBy(Branch.LN_P_TO, -slope * stream.p(e, Branch.LN_P_TO));
    }

    private double stroke(Evaluation e) {
      double drop = stream.p(e, Branch.LN_P_FROM) - stream.p(e, Branch.LN_P_TO);
      double way = stream.parameter(e, FITTED);
      return (way * drop - stream.parameter(e, CRACK)) / stream.parameter(e, FULL);
    }
  }
}
