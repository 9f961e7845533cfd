package dev.offtake.part;

import dev.offtake.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;

/**
 * A latch that remembers that a pressure or a temperature has passed a limit.
 *
 * <p>Valves obey it through their {@code shut when}. It looks at solved states only ({@link
 * Element#settle}), so that the states before and after a trip are two answers.
 *
 * @param watches what it feels; pressures are static, as a sense line feels them
 * @param shuts what the papers say that it shuts, in their words
 * @param delay how long a limit must be passed, s
 * @param byHand whether only a hand resets it
 * @param above position of the upper limit among the parameters; −1 for none
 * @param below position of the lower limit; −1 for none
 * @param reset position of the value that must be regained; −1 for none
 * @param latch how well it remembers
 * @param parameters limits, then whether it is alive
 */
public record Trip(
    String name,
    Facts.Reading watches,
    String shuts,
    double delay,
    boolean byHand,
    int above,
    int below,
    int reset,
    Latching latch,
    List<Parameter> parameters)
    implements Watcher {
  /** The kind. */
  public static final Kind KIND = new TripKind();

  private static final int TRIPPED = 0;
  private static final String UNIT = "trip";

  /** How well a trip remembers. */
  enum Latching {
    /** As the file says. */
    SOUND,
    /** It has tripped without a cause and stays so. */
    FALSELY_TRIPPED,
    /** It lets go as soon as no limit is passed. */
    LETS_GO,
    /** Once tripped it stays so. */
    STAYS
  }

  /** Keeps its parameters. */
  public Trip {
    parameters = List.copyOf(parameters);
  }

  @Override
  public String kind() {
    return KIND.name();
  }

  @Override
  public List<String> looksAt() {
    return List.of(watches.point());
  }

  @Override
  public List<Control> controls() {
    return List.of(Control.memory("tripped", latch == Latching.FALSELY_TRIPPED ? 1 : 0));
  }

  @Override
  public List<Mode> modes() {
    return TripModes.of(this);
  }

  /** How wrong a watched value may be. */
  @FunctionalInterface
  public interface Doubt {
    /**
     * Standard deviation of a value.
     *
     * @param temperature whether it is a temperature
     * @param value K, or Pa above the air outside
     */
    double of(boolean temperature, double value);
  }

  /**
   * How far what it watches is beyond its limit, counted in what the value may be wrong; below zero
   * inside. Infinite for one that trips without a cause, minus infinity for one that is dead.
   *
   * @param view a solved state before it acts
   * @param doubt how wrong the value may be
   */
  public double beyond(View view, Doubt doubt) {
    if (latch == Latching.FALSELY_TRIPPED) {
      return Double.POSITIVE_INFINITY;
    }
    if (view.parameter(limits()) == 0) {
      return Double.NEGATIVE_INFINITY;
    }
    double over = above < 0 ? Double.NEGATIVE_INFINITY : over(view, above, 1, doubt);
    double under = below < 0 ? Double.NEGATIVE_INFINITY : over(view, below, -1, doubt);
    return Math.max(over, under);
  }

  private double over(View view, int which, int sense, Doubt doubt) {
    double outside = view.conditions().ambientP();
    boolean hot = watches.temperature();
    double value = hot ? view.t(watches.point()) : view.sensed(watches.point());
    boolean gauge = parameters.get(which).dimension() == Dimension.GAUGE_PRESSURE;
    double limit = view.parameter(which) + (gauge ? outside : 0);
    return sense * (value - limit) / doubt.of(hot, hot ? limit : limit - outside);
  }

  /** How many of its parameters are limits; whether it is alive comes after them. */
  int limits() {
    return parameters.size() - 1;
  }

  /** The same trip, tripped without a cause. */
  Trip falselyTripped() {
    return with(Latching.FALSELY_TRIPPED);
  }

  /** The same trip with a latch that lets go. */
  Trip withoutLatch() {
    return with(Latching.LETS_GO);
  }

  /** The same trip with a reset that does not come back. */
  Trip withoutReset() {
    return with(Latching.STAYS);
  }

  private Trip with(Latching other) {
    return new Trip(name, watches, shuts, delay, byHand, above, below, reset, other, parameters);
  }

  @Override
  public boolean is(String position, View view) {
    return "tripped".equals(position) == (view.control(TRIPPED) > 0);
  }

  @Override
  public Element element(Wiring wiring) {
    return new Latch(this, wiring);
  }

  @Override
  public Doing doing(View view) {
    if (latch == Latching.FALSELY_TRIPPED) {
      return new Doing("tripped", "tripped", "it tripped without a cause; " + reading(view));
    }
    if (view.parameter(limits()) == 0) {
      return new Doing("dead", "normal", "it is dead and never trips; " + reading(view));
    }
    if (view.control(TRIPPED) > 0) {
      return new Doing("tripped", "tripped", reading(view) + comesBack(view));
    }
    String limits =
        above >= 0 ? ", not above " + limit(view, above) : ", not below " + limit(view, below);
    if (above >= 0 && below >= 0) {
      limits = limits + " nor below " + limit(view, below);
    }
    return new Doing("normal", "normal", reading(view) + limits);
  }

  private String comesBack(View view) {
    if (latch == Latching.STAYS) {
      return "; its reset does not hold";
    }
    if (latch == Latching.LETS_GO) {
      return "; its latch does not hold";
    }
    String value = reset < 0 ? "" : " at " + limit(view, reset);
    return byHand ? "; only a hand resets it" + value : "; it resets by itself" + value;
  }

  private String reading(View view) {
    String point = watches.point();
    return point
        + " is at "
        + (watches.temperature()
            ? view.temperature(view.t(point))
            : view.gauge(view.sensed(point)));
  }

  private String limit(View view, int which) {
    double value = view.parameter(which);
    return switch (parameters.get(which).dimension()) {
      case TEMPERATURE -> view.temperature(value);
      case GAUGE_PRESSURE -> view.gaugeOf(value);
      default -> view.gauge(value);
    };
  }

  private static final class Latch extends Element {
    private final Trip trip;
    private final int variable;
    private final int parameters;
    private final int controls;

    Latch(Trip trip, Wiring wiring) {
      this.trip = trip;
      String point = trip.watches().point();
      variable =
          trip.watches().temperature()
              ? wiring.t(wiring.point(point))
              : wiring.sensed(point, trip.name());
      parameters = wiring.parameters();
      controls = wiring.controls();
    }

    @Override
    public List<Branch> branches() {
      return List.of();
    }

    @Override
    public void evaluate(Evaluation e) {}

    @Override
    public double patience(Evaluation e) {
      return e.controls[controls + TRIPPED] == 0 ? trip.delay() : 0;
    }

    @Override
    public boolean settle(Evaluation e) {
      double before = e.controls[controls + TRIPPED];
      double after = trip.latch() == Latching.FALSELY_TRIPPED ? 1 : after(e, before);
      e.controls[controls + TRIPPED] = after;
      return after != before;
    }

    private double after(Evaluation e, double before) {
      if (e.parameters[parameters + trip.limits()] == 0) {
        return 0;
      }
      if (passed(e, trip.above(), 1) || passed(e, trip.below(), -1)) {
        return 1;
      }
      return switch (trip.latch()) {
        case LETS_GO -> 0;
        case STAYS -> before;
        default -> !trip.byHand() && regained(e) ? 0 : before;
      };
    }

    private boolean regained(Evaluation e) {
      return trip.reset() < 0 || passed(e, trip.reset(), trip.above() >= 0 ? -1 : 1);
    }

    /** Whether the value lies beyond a limit, upwards with sense 1 and downwards with −1. */
    private boolean passed(Evaluation e, int which, int sense) {
      return which >= 0 && sense * (value(e) - limit(e, which)) > 0;
    }

    private double value(Evaluation e) {
      double v = e.variables[variable];
      return trip.watches().temperature() ? v : 1e5 * Math.exp(v);
    }

    private double limit(Evaluation e, int which) {
      double limit = e.parameters[parameters + which];
      boolean gauge = trip.parameters().get(which).dimension() == Dimension.GAUGE_PRESSURE;
      return gauge ? limit + e.conditions.ambientP() : limit;
    }
  }

  private static final class TripKind implements Kind {
    private static final Facts.Reading HARMLESS = new Facts.Reading(Leg.AMBIENT, true);

    @Override
    public String name() {
      return "trip";
    }

    @Override
    public List<String> positions() {
      return List.of("tripped", "normal");
    }

    @Override
    public String says() {
      return "Latches when a pressure or a temperature passes a limit; valves shut when it is"
          + " tripped.";
    }

    @Override
    public List<Key> keys() {
      return List.of(
          Key.of("watches", Form.READING, "duct temperature", "What it feels.").must(),
          Key.of("above", Form.LIMIT, "490 degF for 3 s", "It trips above this."),
          Key.of("below", Form.LIMIT, "5 psig for 3 s", "It trips below this."),
          Key.of("resets", Form.RESET, "by hand below 440 degF", "How it comes back."),
          Key.of("shuts", Form.TEXT, "bleed regulator", "What it shuts, as the papers say."));
    }

    @Override
    public String symbol() {
      return "trip";
    }

    @Override
    public List<String> removableUnits() {
      return List.of("trip");
    }

    @Override
    public Part build(Facts facts) {
      Facts.Reading given = facts.reading("watches");
      Facts.Reading watches = given == null ? HARMLESS : given;
      List<Parameter> own = new ArrayList<>();
      Facts.Limit upper = facts.limit("above");
      Facts.Limit lower = facts.limit("below");
      int above = Threshold.add(facts, "above", watches, upper, own, UNIT);
      int below = Threshold.add(facts, "below", watches, lower, own, UNIT);
      if (upper == null && lower == null) {
        facts.problem("above", "It has no limit", "Add a line such as `above: 490 degF for 3 s`");
      }
      Facts.Reset resets = facts.reset("resets");
      if (resets == null) {
        facts.assume("resets", "only a hand resets it");
      }
      int reset =
          Threshold.add(
              facts, "resets", watches, resets == null ? null : resets.value(), own, UNIT);
      double delay = Threshold.delay(upper, lower);
      boolean byHand = resets == null || resets.byHand();
      own.add(Parameter.exactly("alive", 1, 0, 1, Dimension.NUMBER, UNIT));
      return new Trip(
          facts.name(),
          watches,
          facts.text("shuts"),
          delay,
          byHand,
          above,
          below,
          reset,
          Latching.SOUND,
          own);
    }
  }
}
