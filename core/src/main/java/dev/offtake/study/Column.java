package dev.offtake.study;

import dev.offtake.quantity.Dimension;
import dev.offtake.solve.Quantity;
import dev.offtake.solve.Solution;

/**
 * A number that is read from each state of a curve.
 *
 * @param name such as {@code left duct pressure}
 * @param dimension how it is measured; pressures are gauge pressures, as gauges show them
 * @param reading reads it
 * @param quantity the same number up to a constant, in a form that can be differentiated
 */
public record Column(String name, Dimension dimension, Reading reading, Quantity quantity) {

  /** Reads a number from a state. */
  @FunctionalInterface
  public interface Reading {
    /** The number, SI. */
    double of(Solution solution);
  }

  /**
   * Static pressure of a point above the air outside.
   *
   * @param name of the column
   * @param point number of the point
   */
  public static Column pressure(String name, int point) {
    return new Column(
        name,
        Dimension.GAUGE_PRESSURE,
        s -> s.sensed(point) - s.conditions().ambientP(),
        Quantity.sensed(point));
  }

  /**
   * Temperature of a point.
   *
   * @param name of the column
   * @param point number of the point
   */
  public static Column temperature(String name, int point) {
    return new Column(
        name, Dimension.TEMPERATURE, s -> s.temperature(point), Quantity.temperature(point));
  }

  /**
   * Flow through the first leg of a part.
   *
   * @param name of the column
   * @param part number of the part
   */
  public static Column flow(String name, int part) {
    return new Column(name, Dimension.MASS_FLOW, s -> s.flow(part, 0), Quantity.flow(part, 0));
  }
}
