package dev.offtake.part;

/** A number held between 0 and 1, and where it moves freely. */
final class Clamp {
  private Clamp() {}

  /** The number, not below 0 and not above 1. */
  static double value(double x) {
    return x <= 0 ? 0 : Math.min(x, 1);
  }

  /** Slope of {@link #value}: 1 between the stops, 0 beyond them; at a stop that of the inner side. */
  static double slope(double x) {
    return x >= 0 && x <= 1 ? 1 : 0;
  }
}
