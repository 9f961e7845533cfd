package dev.offtake.part;

import dev.offtake.quantity.Dimension;
import java.util.List;

/** The two temperatures between which a sensor acts: where it begins, and the span from there. */
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
}
