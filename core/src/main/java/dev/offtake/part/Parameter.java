package dev.offtake.part;

import dev.offtake.quantity.Dimension;

/**
 * A number of a part that may differ from part to part, drift or break: the seam at which faults
 * and tolerances enter.
 *
 * @param name trade name within the part, such as {@code set} or {@code back leak}
 * @param value in force when the part is healthy, SI
 * @param low lowest healthy value, SI
 * @param high highest healthy value, SI
 * @param min smallest value that is physically possible, SI
 * @param max largest value that is physically possible, SI
 * @param dimension how the value is measured
 * @param unit removable unit that carries the number, such as {@code control head}
 */
public record Parameter(
    String name,
    double value,
    double low,
    double high,
    double min,
    double max,
    Dimension dimension,
    String unit) {

  /** A parameter whose healthy value is known without a tolerance. */
  public static Parameter exactly(
      String name, double value, double min, double max, Dimension dimension, String unit) {
    return new Parameter(name, value, value, value, min, max, dimension, unit);
  }
}
