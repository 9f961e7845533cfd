package dev.offtake.part;

import dev.offtake.quantity.Dimension;
import java.util.List;

/**
 * The two temperatures between which a sensor acts: where it begins, and the span from there; and
 * what the sensor makes of the temperature of the air: follows · t + adds.
 */
final class TemperatureSpan {
  /** Temperatures outside these are a slip of the pen, K. */
  private static final double COLDEST = 200;

  private static final double HOTTEST = 1500;

  private static final double SMALLEST = 0.5;

  private TemperatureSpan() {}

  /**
   * Reads the keys {@code from} and {@code to}.
   *
   * @param facts what the file says
   * @param unit removable unit that carries them
   * @return the parameters {@code from}, K, and {@code span}, K
   */
  static List<Parameter> read(Facts facts, String unit) {
    Parameter from = facts.parameter("from", COLDEST, HOTTEST, unit);
    double span = facts.si("to") - from.value();
    if (span < SMALLEST) {
      facts.problem("to", "It lies not above `from`", "Give the higher temperature as `to`");
      span = SMALLEST;
    }
    Dimension difference = Dimension.TEMPERATURE_DIFFERENCE;
    return List.of(
        from, Parameter.exactly("span", span, SMALLEST, HOTTEST - COLDEST, difference, unit));
  }

  /**
   * A sensor that tells the truth.
   *
   * @param unit removable unit that carries it
   * @return the parameters {@code sensor follows} and {@code sensor adds}, K
   */
  static List<Parameter> sensor(String unit) {
    return List.of(
        Parameter.exactly("sensor follows", 1, 0, 1, Dimension.SHARE, unit),
        Parameter.exactly(
            "sensor adds", 0, -HOTTEST, HOTTEST, Dimension.TEMPERATURE_DIFFERENCE, unit));
  }

  /**
   * Temperature that a sensor takes the air to have, K.
   *
   * @param view of the part
   * @param follows position of {@code sensor follows}; {@code sensor adds} comes after it
   * @param t temperature of the air, K
   */
  static double feels(View view, int follows, double t) {
    return view.parameter(follows) * t + view.parameter(follows + 1);
  }

  /** What a sensor makes of the air where that is not the truth; empty where it is. */
  static String wrong(View view, int follows, double t) {
    if (view.parameter(follows) == 0) {
      boolean cold = view.parameter(follows + 1) <= COLDEST;
      return cold ? ", but its sensor has failed cold" : ", but its sensor has failed hot";
    }
    if (view.parameter(follows + 1) == 0) {
      return "";
    }
    return ", but its sensor feels " + view.temperature(feels(view, follows, t));
  }

  /** What a sensor that has failed cold feels, K. */
  static double coldest() {
    return COLDEST;
  }

  /** What a sensor that has failed hot feels, K. */
  static double hottest() {
    return HOTTEST;
  }
}
