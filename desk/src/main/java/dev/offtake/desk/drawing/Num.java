package dev.offtake.desk.drawing;

/** Lengths as the drawing writes them: to a tenth of a pixel, the same in every country. */
final class Num {
  private Num() {}

  /** Rounds to what is written, px. */
  static double round(double value) {
    return Math.round(value * 10) / 10.0;
  }

  /** Writes a length, px. */
  static String of(double value) {
    double rounded = round(value) + 0.0;
    return rounded == Math.rint(rounded) ? Long.toString((long) rounded) : Double.toString(rounded);
  }
}
