package dev.offtake.flow;

import java.util.Locale;

/**
 * How the opening (stroke) of a valve turns into area.
 *
 * <p>Openings outside 0..1 count as the nearer end, where the slope is that of the inner side.
 */
public interface OpeningCurve {
  /** Share of the full area at an opening of 0..1. */
  double area(double opening);

  /** Slope of {@link #area}. */
  double slope(double opening);

  /**
   * A named curve: linear, butterfly, equal percentage.
   *
   * @param name of the curve, in any case
   * @return the curve, from 0 shut to 1 open
   * @throws IllegalArgumentException when there is no such curve
   */
  static OpeningCurve named(String name) {
    return switch (name.strip().toLowerCase(Locale.ROOT)) {
      case "linear" -> NamedCurve.LINEAR;
      case "butterfly" -> NamedCurve.BUTTERFLY;
      case "equal percentage" -> NamedCurve.EQUAL_PERCENTAGE;
      default ->
          throw new IllegalArgumentException(
              "No opening curve is called \""
                  + name
                  + "\"; use linear, butterfly, equal percentage or a table");
    };
  }

  /**
   * A curve through points, monotone and smooth between them.
   *
   * @param x openings, rising from 0 to 1, two or more
   * @param y shares of the full area, 0 or more, not falling
   * @return the curve
   * @throws IllegalArgumentException when the points break these rules
   */
  static OpeningCurve table(double[] x, double[] y) {
    return new TableCurve(x, y);
  }
}
