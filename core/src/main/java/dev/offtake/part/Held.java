package dev.offtake.part;

import dev.offtake.quantity.Dimension;

/** A warning that a fault holds lit or dark. */
final class Held {
  private static final String NAME = "held";

  /** Value of the parameter while the warning is free to follow what it watches. */
  private static final double FREE = -1;

  private Held() {}

  /** The parameter: −1 while free, 0 when held dark, 1 when held lit. */
  static Parameter parameter(String unit) {
    return Parameter.exactly(NAME, FREE, FREE, 1, Dimension.NUMBER, unit);
  }

  /**
   * What is shown.
   *
   * @param held value of the parameter
   * @param free what a sound warning would show
   */
  static boolean value(double held, boolean free) {
    return held >= 0 ? held > 0 : free;
  }

  static Mode dark(String name, String unit, String means) {
    return Mode.named(name, unit, means).puts(NAME, 0);
  }

  static Mode lit(String name, String unit, String means) {
    return Mode.named(name, unit, means).puts(NAME, 1);
  }
}
