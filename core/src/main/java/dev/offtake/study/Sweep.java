package dev.offtake.study;

import dev.offtake.quantity.Unit;
import dev.offtake.solve.Setup;
import java.util.List;
import java.util.Optional;

/**
 * A way along which a system is looked at: one quantity is moved, all else stands still.
 *
 * @param name of the quantity, such as {@code core} or {@code left bleed regulator set}
 * @param unit in which its values are written and printed
 * @param stops values at which the system is looked at, SI, strictly rising, two or more
 * @param knob makes the question at a value
 * @param varied the number of a part that is moved; empty when power or day is
 */
public record Sweep(
    String name, Unit unit, List<Double> stops, Knob knob, Optional<Setup.PartNumber> varied) {

  /** Makes the question at a value of the quantity. */
  @FunctionalInterface
  public interface Knob {
    /**
     * The question.
     *
     * @param value of the quantity, SI
     */
    Setup at(double value);
  }

  /**
   * Keeps its stops.
   *
   * @throws IllegalArgumentException unless there are two stops or more, strictly rising
   */
  public Sweep {
    stops = List.copyOf(stops);
    boolean rises = stops.size() >= 2;
    for (int i = 1; i < stops.size(); i++) {
      rises &= stops.get(i) > stops.get(i - 1);
    }
    if (!rises) {
      throw new IllegalArgumentException("a sweep needs two stops or more, strictly rising");
    }
  }

  /** First value, SI. */
  public double from() {
    return stops.get(0);
  }

  /** Last value, SI. */
  public double to() {
    return stops.get(stops.size() - 1);
  }

  /** How far it is from the first to the last value, SI, above 0. */
  public double length() {
    return to() - from();
  }
}
