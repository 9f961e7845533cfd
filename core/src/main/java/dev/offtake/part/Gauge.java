package dev.offtake.part;

import dev.offtake.quantity.Dimension;
import java.util.List;
import java.util.Optional;

/**
 * The kind <em>gauge</em>: one or more needles on a scale, with a step and an error.
 *
 * <p>Its error has a part that is the same at each reading (one bias for each gauge, its parameter)
 * and a part that differs from reading to reading.
 *
 * @param name full name
 * @param needles what it shows
 * @param scale lowest and highest mark; a needle at either end is a bound
 * @param step distance of its marks, Pa or K; 0 when read to any digit
 * @param mark where one of its marks stands, Pa above the gauge's zero or K
 * @param each part of the error that differs from reading to reading, Pa or K
 * @param relative what its zero is: ambient, absolute, cabin or cell
 * @param seen where it is seen, such as flight deck
 * @param parameters the constant part of its error, whether its lines are crossed; for each needle
 *     {@link #OFFSET}, {@link #LOSS}, {@link #HELD} and {@link #HELD_AT}; for a cabin's or cell's
 *     gauge its zero
 */
public record Gauge(
    String name,
    List<Facts.Needle> needles,
    Scale scale,
    double step,
    double mark,
    double each,
    String relative,
    String seen,
    List<Parameter> parameters)
    implements Watcher {

  /** The kind. */
  public static final Kind KIND =
      new SimpleKind(
          "gauge",
          "Shows a pressure or a temperature, with a scale, a step and an error.",
          "gauge",
          List.of(
              Key.of(
                  "needles", Form.NEEDLES, "{L: left duct pressure}", "Needle and what it reads."),
              Key.of("reads", Form.READING, "interstage pressure", "What its one needle reads."),
              Key.of("on", Form.TEXT, "each side", "Whether each side has one."),
              Key.of("scale", Form.TEXT, "0..80 psig", "Lowest and highest mark."),
              Key.of("step", Form.TEXT, "1 psi", "Distance of its marks."),
              Key.of("good to", Form.TEXT, "1 psi", "Its error; three quarters count as constant."),
              Key.of("good to constant", Form.TEXT, "0.8 psi", "Error that is the same each time."),
              Key.of("good to each reading", Form.TEXT, "0.3 psi", "Error that differs each time."),
              Key.of("seen", Form.TEXT, "flight deck", "Where it is seen."),
              Key.choice(
                  "relative to",
                  List.of("ambient", "absolute", "cabin", "cell"),
                  "What its zero is."),
              Key.quantity(
                  "zero at",
                  Dimension.PRESSURE,
                  "11.5 psia",
                  "Pressure of the cabin or test cell that it counts from.")),
          List.of("gauge", "sender line", "sensor"),
          facts -> new GaugeReader(facts).gauge());

  /**
   * Share of a plain error that counts as the same at each reading (common practice, no source).
   */
  public static final double CONSTANT_SHARE = 0.75;

  /** Parameter: the constant part of its error, Pa or K. */
  static final int BIAS = 0;

  /** Parameter: 1 when each of two needles shows what the other should. */
  static final int CROSSED = 1;

  static final String CROSSED_NAME = "needles crossed";

  /** Position of the first parameter of the first needle. */
  private static final int NEEDLES = 2;

  /** Among the parameters of a needle: how much too high it shows, Pa or K. */
  static final int OFFSET = 0;

  /** Among the parameters of a needle: share of the gauge pressure that its line loses. */
  static final int LOSS = 1;

  /** Among the parameters of a needle: 1 when it no longer moves. */
  static final int HELD = 2;

  /** Among the parameters of a needle: what it shows while held, as {@link #shows} tells it. */
  static final int HELD_AT = 3;

  private static final List<String> OF_A_NEEDLE = List.of("offset", "line loss", "held", "held at");

  /** Keeps its lists. */
  public Gauge {
    needles = List.copyOf(needles);
    parameters = List.copyOf(parameters);
  }

  /**
   * Ends of a scale as they are marked: Pa above the gauge's zero, or K.
   *
   * @param low lowest mark; −∞ when not known
   * @param high highest mark; +∞ when not known
   */
  public record Scale(double low, double high) {
    /** A scale without ends. */
    public static final Scale ENDLESS =
        new Scale(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
  }

  /** Whether it shows temperatures, else pressures. */
  public boolean temperature() {
    return !needles.isEmpty() && needles.get(0).reads().temperature();
  }

  /** Dimension of its errors and steps. */
  public Dimension difference() {
    return temperature() ? Dimension.TEMPERATURE_DIFFERENCE : Dimension.PRESSURE_DIFFERENCE;
  }

  /**
   * Pressure at which its needle stands at zero, Pa absolute.
   *
   * @param view the solved state
   */
  public double zero(View view) {
    int at = first(needles.size());
    if (parameters.size() > at) {
      boolean gauge = parameters.get(at).dimension() == Dimension.GAUGE_PRESSURE;
      return view.parameter(at) + (gauge ? view.conditions().ambientP() : 0);
    }
    return absolute() ? 0 : view.conditions().ambientP();
  }

  private boolean absolute() {
    return relative.equals("absolute");
  }

  /**
   * What a needle would show without its scale's ends: K, or Pa above the gauge's zero; with all
   * that is wrong with the gauge, its lines and its sensors.
   *
   * @param needle number of the needle
   * @param view the solved state
   */
  public double shows(int needle, View view) {
    int own = first(needle);
    if (view.parameter(own + HELD) > 0) {
      return view.parameter(own + HELD_AT);
    }
    boolean crossed = view.parameter(CROSSED) > 0;
    double value = feels(crossed ? needles.size() - 1 - needle : needle, view);
    return value + view.parameter(own + OFFSET) + view.parameter(BIAS);
  }

  /**
   * What moves a needle.
   *
   * @param needle number of the needle whose line or sensor it follows
   * @param share of the pressure or temperature that reaches it
   * @param ambient how much it moves with the pressure of the air outside
   */
  public record Feeling(int needle, double share, double ambient) {}

  /**
   * What moves a needle in a state; empty for one that is held.
   *
   * @param needle number of the needle
   * @param view the solved state
   */
  public Optional<Feeling> feeling(int needle, View view) {
    if (view.parameter(first(needle) + HELD) > 0) {
      return Optional.empty();
    }
    int feels = view.parameter(CROSSED) > 0 ? needles.size() - 1 - needle : needle;
    double share = temperature() ? 1 : 1 - view.parameter(first(feels) + LOSS);
    int at = first(needles.size());
    boolean fixed =
        temperature()
            || (parameters.size() > at
                ? parameters.get(at).dimension() != Dimension.GAUGE_PRESSURE
                : absolute());
    double line = temperature() ? 0 : 1 - share;
    return Optional.of(new Feeling(feels, share, fixed ? line : line - 1));
  }

  /**
   * What moves a needle as it stands: that of the other needle where its lines are crossed.
   *
   * @param needle number of the needle
   * @param view the solved state
   * @return empty where it is stuck
   */
  public Optional<Facts.Reading> follows(int needle, View view) {
    if (view.parameter(first(needle) + HELD) > 0) {
      return Optional.empty();
    }
    boolean crossed = view.parameter(CROSSED) > 0;
    return Optional.of(needles.get(crossed ? needles.size() - 1 - needle : needle).reads());
  }

  /** What arrives by the line or from the sensor of a needle: K, or Pa above the gauge's zero. */
  private double feels(int needle, View view) {
    Facts.Reading reads = needles.get(needle).reads();
    if (reads.temperature()) {
      return view.t(reads.point());
    }
    double left = 1 - view.parameter(first(needle) + LOSS);
    double outside = view.conditions().ambientP();
    double sensed = view.sensed(reads.point());
    double arrives = left == 1 ? sensed : outside + left * (sensed - outside);
    return arrives - zero(view);
  }

  /** Position of the first parameter of a needle. */
  static int first(int needle) {
    return NEEDLES + OF_A_NEEDLE.size() * needle;
  }

  /** Name of a parameter of a needle. */
  static String number(String mark, int which) {
    return (mark.isEmpty() ? "" : mark + " ") + OF_A_NEEDLE.get(which);
  }

  /** Lowest that it can show, SI; the usual one where its scale is not known. */
  double lowest(double usual) {
    return Double.isInfinite(scale.low()) ? usual : Math.max(0, scale.low());
  }

  /** Highest that it can show, SI; the usual one where its scale is not known. */
  double highest(double usual) {
    return Double.isInfinite(scale.high()) ? usual : scale.high();
  }

  @Override
  public List<String> looksAt() {
    return needles.stream().map(needle -> needle.reads().point()).toList();
  }

  @Override
  public List<Mode> modes() {
    return needles.isEmpty() ? List.of() : new GaugeModes(this).all();
  }

  /**
   * Whether a needle stands against an end of the scale because the value lies beyond it.
   *
   * @param needle number of the needle
   * @param view the solved state
   */
  public boolean pegged(int needle, View view) {
    double value = shows(needle, view);
    return value < scale.low() || value > scale.high();
  }

  /**
   * What a person reads off a needle: the nearest mark, or the end of the scale where it is pegged.
   * K, or Pa above the gauge's zero.
   *
   * @param needle number of the needle
   * @param view the solved state
   */
  public double read(int needle, View view) {
    double value = shows(needle, view);
    double nearest = step > 0 ? mark + step * Math.rint((value - mark) / step) : value;
    return Math.max(scale.low(), Math.min(scale.high(), nearest));
  }

  /** Dimension of what its needles show. */
  public Dimension dimension() {
    if (temperature()) {
      return Dimension.TEMPERATURE;
    }
    return absolute() ? Dimension.ABSOLUTE_PRESSURE : Dimension.GAUGE_PRESSURE;
  }

  @Override
  public String kind() {
    return KIND.name();
  }

  @Override
  public Doing doing(View view) {
    StringBuilder word = new StringBuilder();
    boolean pegged = false;
    for (int i = 0; i < needles.size(); i++) {
      double value = shows(i, view);
      pegged |= pegged(i, view);
      String mark = needles.get(i).mark();
      word.append(i == 0 ? "" : ", ").append(mark).append(mark.isEmpty() ? "" : " ");
      word.append(view.parameter(first(i) + HELD) > 0 ? "stuck at " : "");
      word.append(text(Math.max(scale.low(), Math.min(scale.high(), value)), view));
    }
    if (pegged) {
      String ends = text(scale.low(), view) + " to " + text(scale.high(), view);
      String faults = new GaugeFaults(this, view).words();
      return new Doing("pegged", word + ", pegged", "its scale runs from " + ends + faults);
    }
    return new Doing("reads", word.toString(), why(view) + new GaugeFaults(this, view).words());
  }

  private String why(View view) {
    if (temperature()) {
      return "total temperature";
    }
    String why = "static pressure against " + relative;
    boolean stated = parameters.size() > first(needles.size());
    return stated ? why + " at " + view.print(zero(view), Dimension.ABSOLUTE_PRESSURE) : why;
  }

  private String text(double value, View view) {
    return view.print(value, dimension());
  }
}
