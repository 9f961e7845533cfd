package dev.offtake.part;

import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Stated;

/** From the bores and flow coefficients that manuals print to the effective areas of the laws. */
final class Bore {
  private Bore() {}

  /** Area of a circle, m², of a diameter in m. */
  static double area(double diameter) {
    return 0.25 * Math.PI * diameter * diameter;
  }

  /**
   * A parameter that is the flow area of a bore, its tolerance carried over.
   *
   * @param name of the parameter
   * @param bore stated diameter, m
   * @param coefficient stated share of the bore's area that is effective
   * @param unit removable unit
   */
  static Parameter parameter(String name, Stated bore, Stated coefficient, String unit) {
    double value = area(bore.nominal()) * coefficient.nominal();
    double low = area(bore.low()) * coefficient.low();
    double high = area(bore.high()) * coefficient.high();
    return new Parameter(
        name, value, low, high, 0, Math.max(high, area(bore.nominal())), Dimension.AREA, unit);
  }

  /** The same parameter, which a failure may make so many times as large. */
  static Parameter growing(Parameter area, double times) {
    return new Parameter(
        area.name(),
        area.value(),
        area.low(),
        area.high(),
        area.min(),
        Math.max(area.max(), times * area.value()),
        area.dimension(),
        area.unit());
  }

  /** The same where the whole bore counts. */
  static Parameter parameter(String name, Stated bore, String unit) {
    return parameter(name, bore, Stated.of(1, Dimension.NUMBER), unit);
  }
}
