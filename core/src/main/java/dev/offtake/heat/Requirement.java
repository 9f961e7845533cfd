package dev.offtake.heat;

/** Checks of numbers that a person gave, with what is wrong in words. */
final class Requirement {
  private Requirement() {}

  static void above(double limit, double value, String what) {
    if (!(value > limit && value < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          what + " must be above " + limit + ", not " + value + "; check the number and its unit");
    }
  }

  static void within(double low, double high, double value, String what) {
    if (!(value >= low && value <= high)) {
      throw new IllegalArgumentException(
          what
              + " must lie between "
              + low
              + " and "
              + high
              + ", not "
              + value
              + "; check the number and its unit");
    }
  }
}
