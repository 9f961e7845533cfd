package dev.offtake.quantity;

import java.util.List;

/**
 * One unit of one dimension: {@code SI = number · factor + offset}.
 *
 * @param symbol how the unit is printed, such as {@code lb/min}
 * @param spellings further ways in which papers write it, upper and lower case alike
 * @param dimension what it measures; {@code degF} of a temperature and {@code degF} of a difference
 *     of temperatures are two units
 * @param factor SI units in one of this unit, above zero
 * @param offset SI value of zero of this unit; zero for all but temperatures
 */
public record Unit(
    String symbol, List<String> spellings, Dimension dimension, double factor, double offset) {

  /** Keeps its spellings. */
  public Unit {
    spellings = List.copyOf(spellings);
  }

  /**
   * Converts into SI.
   *
   * @param number in this unit
   * @return in the SI unit of the dimension
   */
  public double toSi(double number) {
    return number * factor + offset;
  }

  /**
   * Converts from SI.
   *
   * @param si in the SI unit of the dimension
   * @return in this unit
   */
  public double fromSi(double si) {
    return (si - offset) / factor;
  }
}
