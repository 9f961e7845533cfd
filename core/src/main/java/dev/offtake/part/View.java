package dev.offtake.part;

import dev.offtake.quantity.Dimension;

/** A solved state as seen from one part: pressures, temperatures, flows, and how to print them. */
public interface View {
  /** Total pressure of a point, Pa absolute. */
  double p(String point);

  /** Temperature of a point, K. */
  double t(String point);

  /** Static pressure that a gauge or sense line feels at a point, Pa absolute. */
  double sensed(String point);

  /** Flow of the part's own leg, kg/s, positive in the direction of the path. */
  double flow(int leg);

  /** Whether the part's own leg is choked. */
  boolean choked(int leg);

  /** The part's own observable, by position. */
  double observed(int which);

  /**
   * An observable of another part; NaN where that part has none of this name.
   *
   * @param part full name
   * @param observable one of the part's {@link Part#observables()}
   */
  double observed(String part, String observable);

  /** The part's own parameter in force, by position, SI. */
  double parameter(int which);

  /** The part's own control, by position. */
  double control(int which);

  /** Why the part's own control has its value, in words; empty when there is nothing to say. */
  String because(int control);

  /** Conditions outside. */
  Conditions conditions();

  /** Prints an absolute pressure as a gauge pressure with its unit. */
  String gauge(double pa);

  /** Prints a gauge pressure given as Pa above ambient, with its unit. */
  String gaugeOf(double paAbove);

  /** Prints a pressure difference with its unit. */
  String difference(double pa);

  /** Prints a temperature with its unit. */
  String temperature(double kelvin);

  /**
   * Prints any value with its unit.
   *
   * @param si value in the SI unit of the dimension
   * @param dimension what it measures
   */
  String print(double si, Dimension dimension);

  /** Prints a mass flow with its unit. */
  String massFlow(double kgPerSecond);
}
