package dev.offtake.part;

import dev.offtake.air.GasState;
import dev.offtake.flow.NozzleLaw;
import dev.offtake.quantity.Dimension;
import java.util.List;

/**
 * A joint that opens with heat: area = wide open area·(T − T₀)/(T₁ − T₀) between 0 and 1, T the
 * temperature of the air at its point.
 *
 * <p>Metal follows the air inside within seconds, so that the air's temperature stands for that of
 * the joint. The temperatures between which a joint opens are an assumption.
 *
 * @param name full name
 * @param leg from the point that leaks to where it blows
 * @param parameters effective area when wide open, m²; temperatures at which it begins to open and
 *     is wide open, K
 */
record HotHole(String name, Leg leg, List<Parameter> parameters) implements Part {
  private static final int AREA = 0;
  private static final int OPENS = 1;
  private static final int WIDE = 2;

  /** Begins to open at 250 °F, K: an assumption. */
  private static final double USUAL_OPENS = 394.261;

  /** Is wide open at 450 °F, K: an assumption. */
  private static final double USUAL_WIDE = 505.372;

  private static final double MOST = 20 * Holes.IN2;

  /** Smallest difference between the two temperatures, K. */
  private static final double LEAST_SPAN = 1;

  HotHole {
    parameters = List.copyOf(parameters);
  }

  /** A joint that stays tight, however hot, until its area is changed. */
  static HotHole tight(String name, String at, String into) {
    return new HotHole(
        name,
        new Leg(at, into, Double.NaN, false),
        List.of(
            Parameter.exactly("area", 0, 0, MOST, Dimension.AREA, "clamp"),
            temperature("opens above", USUAL_OPENS),
            temperature("wide open at", USUAL_WIDE)));
  }

  private static Parameter temperature(String name, double value) {
    return Parameter.exactly(name, value, 220, 1200, Dimension.TEMPERATURE, "clamp");
  }

  @Override
  public String kind() {
    return Leak.KIND.name();
  }

  @Override
  public List<Leg> legs() {
    return List.of(leg);
  }

  @Override
  public Element element(Wiring wiring) {
    return new Joint(leg, wiring);
  }

  @Override
  public Doing doing(View view) {
    double t = view.t(leg.from());
    String air = leg.from() + " " + view.temperature(t);
    if (t <= view.parameter(OPENS)) {
      String why = air + " is under the " + view.temperature(view.parameter(OPENS));
      return new Doing("tight", "tight", why + " above which the joint opens");
    }
    Doing loses = Tell.resistance(view, leg, "loses");
    return new Doing(loses.regime(), loses.word(), loses.why() + "; " + air + " opens the joint");
  }

  private static final class Joint extends HoleElement {
    private final int parameters;

    Joint(Leg leg, Wiring wiring) {
      super(leg, wiring, new NozzleLaw(), 0);
      parameters = wiring.parameters();
    }

    @Override
    double wide(Evaluation e) {
      return e.parameters[parameters + AREA];
    }

    @Override
    double opening(Evaluation e, GasState from) {
      return Clamp.value(stroke(e, from));
    }

    @Override
    double openingByT(Evaluation e, GasState from) {
      return Clamp.slope(stroke(e, from)) / span(e);
    }

    private double stroke(Evaluation e, GasState from) {
      return (from.t - e.parameters[parameters + OPENS]) / span(e);
    }

    private double span(Evaluation e) {
      double span = e.parameters[parameters + WIDE] - e.parameters[parameters + OPENS];
      return Math.max(LEAST_SPAN, span);
    }
  }
}
