package dev.offtake.part;

import dev.offtake.quantity.Dimension;
import java.util.List;

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
 * @param parameters the constant part of its error; for a cabin's or cell's gauge its zero too
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
          List.of("gauge"),
          facts -> new GaugeReader(facts).gauge());

  /** Parameter: the constant part of its error, Pa or K. */
  static final int BIAS = 0;

  /** Parameter: pressure of the cabin or cell that it counts from, Pa; only such gauges have it. */
  static final int ZERO = 1;

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
    if (parameters.size() > ZERO) {
      boolean gauge = parameters.get(ZERO).dimension() == Dimension.GAUGE_PRESSURE;
      return view.parameter(ZERO) + (gauge ? view.conditions().ambientP() : 0);
    }
    return absolute() ? 0 : view.conditions().ambientP();
  }

  private boolean absolute() {
    return relative.equals("absolute");
  }

  /**
   * What a needle would show without its scale's ends: K, or Pa above the gauge's zero.
   *
   * @param needle number of the needle
   * @param view the solved state
   */
  public double shows(int needle, View view) {
    Facts.Reading reads = needles.get(needle).reads();
    double value =
        reads.temperature() ? view.t(reads.point()) : view.sensed(reads.point()) - zero(view);
    return value + view.parameter(BIAS);
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
      word.append(text(Math.max(scale.low(), Math.min(scale.high(), value)), view));
    }
    if (pegged) {
      String ends = text(scale.low(), view) + " to " + text(scale.high(), view);
      return new Doing("pegged", word + ", pegged", "its scale runs from " + ends);
    }
    return new Doing("reads", word.toString(), why(view));
  }

  private String why(View view) {
    if (temperature()) {
      return "total temperature";
    }
    String why = "static pressure against " + relative;
    boolean stated = parameters.size() > ZERO;
    return stated ? why + " at " + view.print(zero(view), Dimension.ABSOLUTE_PRESSURE) : why;
  }

  private String text(double value, View view) {
    return view.print(value, dimension());
  }
}
