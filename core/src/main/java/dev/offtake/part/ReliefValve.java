package dev.offtake.part;

import dev.offtake.quantity.Dimension;
import java.util.List;

/**
 * A valve that opens against too much pressure and, once open, shuts only at a lower one.
 *
 * <p>Opening = (x − start)/(full − start) between 0 and 1, where x is the pressure ahead less that
 * outside (or behind) and start is the cracking pressure, or the reseating pressure once it has
 * popped.
 *
 * @param againstBehind whether its pressures count from the point behind it, else from the air
 *     outside
 */
public record ReliefValve(String name, ValveBody body, boolean againstBehind) implements Valve {
  private static final String UNIT = "relief valve";

  private static final UsualBody USUAL =
      new UsualBody("leak", "0.1", "0.7", UsualBody.LINEAR_FIRST, UNIT);

  /** The kind. */
  public static final Kind KIND =
      new SimpleKind(
          "relief valve",
          "Opens against too much pressure and reseats at a lower one.",
          "relief valve",
          USUAL.keys(
              "duct -> ambient",
              Key.quantity("cracks at", Dimension.GAUGE_PRESSURE, "70 psig", "Where it opens.")
                  .must(),
              Key.quantity(
                  "full at",
                  Dimension.GAUGE_PRESSURE,
                  "77 psig",
                  "Where it is wide open; a tenth above cracking if not said."),
              Key.quantity(
                  "reseats at",
                  Dimension.GAUGE_PRESSURE,
                  "63 psig",
                  "Where it shuts again once open; a tenth below cracking if not said."),
              Key.choice(
                  "counts from",
                  List.of("ambient", "behind"),
                  "Whether its pressures count from the air outside or from the point behind it.")),
          List.of(UNIT),
          POSITIONS,
          ReliefValve::of);

  /** Stroke and blowdown when a file does not say, as a share of the cracking pressure. */
  private static final double USUAL_SHARE = 0.1;

  private static final double MOST = 5e6;
  private static final double SMALLEST_STROKE = 100;

  private static final int POPPED = 1;
  static final int CRACK = ValveBody.COUNT;
  private static final int STROKE = CRACK + 1;
  private static final int RESEAT = STROKE + 1;

  private static ReliefValve of(Facts facts) {
    Parameter crack = facts.parameter("cracks at", 0, MOST, UNIT);
    List<Parameter> own = List.of(crack, stroke(facts, crack), reseat(facts, crack));
    boolean behind = "behind".equals(facts.choice("counts from"));
    return new ReliefValve(facts.name(), USUAL.read(facts).with(own), behind);
  }

  private static Parameter stroke(Facts facts, Parameter crack) {
    double usual = Math.max(SMALLEST_STROKE, USUAL_SHARE * crack.value());
    double value = usual;
    if (facts.has("full at")) {
      value = facts.si("full at") - crack.value();
    } else {
      facts.assume("full at", "it is wide open a tenth above its cracking pressure");
    }
    if (value < SMALLEST_STROKE) {
      facts.problem("full at", "It cannot be wide open before it cracks", "Give more");
      value = usual;
    }
    Dimension difference = Dimension.PRESSURE_DIFFERENCE;
    return Parameter.exactly("stroke", value, SMALLEST_STROKE, MOST, difference, UNIT);
  }

  private static Parameter reseat(Facts facts, Parameter crack) {
    if (!facts.has("reseats at")) {
      facts.assume("reseats at", "it reseats a tenth below its cracking pressure");
      double value = (1 - USUAL_SHARE) * crack.value();
      return Parameter.exactly("reseats at", value, 0, MOST, Dimension.GAUGE_PRESSURE, UNIT);
    }
    Parameter reseat = facts.parameter("reseats at", 0, MOST, UNIT);
    if (reseat.value() > crack.value()) {
      facts.problem(
          "reseats at", "It cannot reseat above its cracking pressure", "Give less or equal");
    }
    return reseat;
  }

  @Override
  public String kind() {
    return KIND.name();
  }

  @Override
  public List<Control> controls() {
    return List.of(ValveBody.lock(), Control.memory("popped", 0));
  }

  @Override
  public boolean is(String position, View view) {
    return "shut".equals(position) == (view.observed(0) <= 0);
  }

  @Override
  public List<Mode> modes() {
    return ReliefValveModes.of(body);
  }

  @Override
  public Element element(Wiring wiring) {
    return new Popping(againstBehind, new ValveStream(wiring, body));
  }

  @Override
  public Doing moving(View view) {
    String from = body.leg().from();
    double ahead = view.p(from);
    double acting =
        ahead - (againstBehind ? view.p(body.leg().to()) : view.conditions().ambientP());
    String at = from + " " + print(view, acting);
    String word = Openings.word(view.observed(0));
    if (view.observed(0) <= 0) {
      String why = at + " is under the " + print(view, view.parameter(CRACK)) + " that open it";
      return new Doing("shut", "shut", why);
    }
    if (acting < view.parameter(CRACK)) {
      String reseats = print(view, view.parameter(RESEAT));
      String why = at + ": it has popped and reseats only under " + reseats;
      return new Doing("not reseated", word, Openings.chokedOr(view, why));
    }
    String why = at + " is above the " + print(view, view.parameter(CRACK)) + " that open it";
    return new Doing("relieving", word, Openings.chokedOr(view, why));
  }

  private String print(View view, double acting) {
    return againstBehind ? view.difference(acting) : view.gaugeOf(acting);
  }

  private static final class Popping extends ValveElement {
    private final boolean againstBehind;

    Popping(boolean againstBehind, ValveStream stream) {
      super(stream);
      this.againstBehind = againstBehind;
    }

    @Override
    double free(Evaluation e) {
      return Clamp.value(stroke(e));
    }

    @Override
    void slopes(Evaluation e) {
      double slope = Clamp.slope(stroke(e)) / (full(e) - start(e));
      stream.movedBy(Branch.LN_P_FROM, slope * stream.p(e, Branch.LN_P_FROM));
      if (againstBehind) {
        stream.movedBy(Branch.LN_P_TO, -slope * stream.p(e, Branch.LN_P_TO));
      }
    }

    @Override
    public boolean settle(Evaluation e) {
      if (!stream.moves(e)) {
        return false;
      }
      double before = stream.control(e, POPPED);
      double acting = acting(e);
      double after = before;
      if (acting > stream.parameter(e, CRACK)) {
        after = 1;
      } else if (acting < stream.parameter(e, RESEAT)) {
        after = 0;
      }
      e.controls[stream.controls + POPPED] = after;
      return after != before;
    }

    private double stroke(Evaluation e) {
      return (acting(e) - start(e)) / (full(e) - start(e));
    }

    private double acting(Evaluation e) {
      double base = againstBehind ? stream.p(e, Branch.LN_P_TO) : e.conditions.ambientP();
      return stream.p(e, Branch.LN_P_FROM) - base;
    }

    /**
     * A reseating pressure above the cracking pressure would have no meaning and counts as equal to
     * it.
     */
    private double start(Evaluation e) {
      double crack = stream.parameter(e, CRACK);
      boolean popped = stream.control(e, POPPED) > 0;
      return popped ? Math.min(crack, stream.parameter(e, RESEAT)) : crack;
    }

    private double full(Evaluation e) {
      return stream.parameter(e, CRACK) + stream.parameter(e, STROKE);
    }
  }
}
