package dev.offtake.part;

import dev.offtake.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The kind <em>limit</em>: a value that the papers allow nobody to pass. Nothing acts when it is
 * passed; every answer says so, and no check is asked for that would pass it.
 *
 * @param name full name
 * @param watches what it holds for; pressures are static, as a gauge reads them
 * @param most position of the highest value allowed among the parameters; −1 for none
 * @param least position of the lowest value allowed; −1 for none
 * @param seconds how long it may be passed, s; at rest it may never
 * @param counts 1 while it counts
 * @param parameters what is allowed, K, or Pa gauge or absolute
 */
public record OperatingLimit(
    String name,
    Facts.Reading watches,
    int most,
    int least,
    double seconds,
    Control counts,
    List<Parameter> parameters)
    implements Watcher {
  /** The position in which a value is not allowed. */
  public static final String PASSED = "passed";

  /** The kind. */
  public static final Kind KIND =
      new SimpleKind(
          "limit",
          "A value that may not be passed. Nothing acts, but every answer says when it is passed.",
          "limit",
          List.of(
              Key.of("watches", Form.READING, "duct temperature", "What it holds for.").must(),
              Key.of("at most", Form.LIMIT, "450 degF for 5 s", "Highest value that is allowed."),
              Key.of("at least", Form.LIMIT, "5 psig", "Lowest value that is allowed."),
              Key.of("while", Form.CONDITION, "start switch is ON", "When it counts.")),
          List.of(),
          List.of(PASSED, "kept"),
          OperatingLimit::of);

  private static final String UNIT = "limit";
  private static final Facts.Reading HARMLESS = new Facts.Reading(Leg.AMBIENT, true);

  /** Keeps its parameters. */
  public OperatingLimit {
    parameters = List.copyOf(parameters);
  }

  private static Part of(Facts facts) {
    Facts.Reading given = facts.reading("watches");
    Facts.Reading watches = given == null ? HARMLESS : given;
    List<Parameter> own = new ArrayList<>();
    Facts.Limit upper = facts.limit("at most");
    Facts.Limit lower = facts.limit("at least");
    int most = Threshold.add(facts, "at most", watches, upper, own, UNIT);
    int least = Threshold.add(facts, "at least", watches, lower, own, UNIT);
    if (!facts.has("at most") && !facts.has("at least")) {
      facts.problem("at most", "It has no value", "Add a line such as `at most: 450 degF`");
    }
    Control counts = Commands.onWhen(facts, "while", "counts");
    return new OperatingLimit(
        facts.name(), watches, most, least, Threshold.delay(upper, lower), counts, own);
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
    return List.of(counts);
  }

  @Override
  public List<Mode> modes() {
    return List.of();
  }

  @Override
  public boolean is(String position, View view) {
    return position.equals(PASSED) == passed(view);
  }

  /** Whether it counts in a state. */
  public boolean counts(View view) {
    return view.control(0) > 0;
  }

  /** Whether it counts and is passed. */
  public boolean passed(View view) {
    return counts(view)
        && ((most >= 0 && value(view) > allowed(view, most))
            || (least >= 0 && value(view) < allowed(view, least)));
  }

  /** The value that it holds for, K, or Pa absolute. */
  public double value(View view) {
    String point = watches.point();
    return watches.temperature() ? view.t(point) : view.sensed(point);
  }

  /** The highest temperature allowed, K; infinite where it allows any, or counts only at times. */
  public double hottest() {
    boolean heat = watches.temperature() && most >= 0 && counts.rules().isEmpty();
    return heat ? parameters.get(most).value() : Double.POSITIVE_INFINITY;
  }

  /** The allowed value that lies nearest to the one that it holds for, K, or Pa absolute. */
  public double nearest(View view) {
    if (most < 0 || least < 0) {
      return allowed(view, Math.max(most, least));
    }
    double value = value(view);
    double high = allowed(view, most);
    double low = allowed(view, least);
    return Math.abs(value - high) <= Math.abs(value - low) ? high : low;
  }

  /** A value allowed, K, or Pa absolute. */
  private double allowed(View view, int which) {
    boolean gauge = parameters.get(which).dimension() == Dimension.GAUGE_PRESSURE;
    return view.parameter(which) + (gauge ? view.conditions().ambientP() : 0);
  }

  @Override
  public Doing doing(View view) {
    if (!counts(view)) {
      return new Doing("kept", "does not count", view.because(0));
    }
    boolean passed = passed(view);
    List<String> says = new ArrayList<>();
    if (most >= 0) {
      says.add(against(view, most, 1));
    }
    if (least >= 0) {
      says.add(against(view, least, -1));
    }
    String word = passed ? PASSED : "kept";
    String why = watches.name() + " " + print(view, value(view)) + ", " + String.join(", ", says);
    return new Doing(word, word, why);
  }

  /** How far the value lies from one that is allowed. */
  private String against(View view, int which, int sense) {
    double room = sense * (allowed(view, which) - value(view));
    String far = gap(view, Math.abs(room));
    String side = (sense > 0) == (room >= 0) ? " under" : " above";
    String shout = room >= 0 ? side : side.toUpperCase(Locale.ROOT);
    return far + shout + " the " + print(view, allowed(view, which)) + bound(sense);
  }

  private static String bound(int sense) {
    return sense > 0 ? " allowed" : " that it must have";
  }

  private String gap(View view, double by) {
    return watches.temperature()
        ? view.print(by, Dimension.TEMPERATURE_DIFFERENCE)
        : view.difference(by);
  }

  private String print(View view, double value) {
    return watches.temperature() ? view.temperature(value) : view.gauge(value);
  }
}
