package dev.offtake.flow;

/** How the opening (stroke) of a valve turns into area. */
public interface OpeningCurve {
  /** Share of the full area at an opening of 0..1. */
  double area(double opening);

  /** Slope of {@link #area}. */
  double slope(double opening);

  /** A named curve: linear, butterfly, equal percentage. */
  static OpeningCurve named(String name) {
    throw new UnsupportedOperationException();
  }
}
