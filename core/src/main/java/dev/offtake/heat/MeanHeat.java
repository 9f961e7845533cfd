package dev.offtake.heat;

import dev.offtake.air.GasState;

/** Mean isobaric heat capacity between two temperatures, with its derivatives. Mutable. */
final class MeanHeat {
  /**
   * Difference below which an integration rule stands for the difference of enthalpies, K. At half
   * a kelvin both are good to 1e-12; below, the difference would lose digits.
   */
  private static final double CLOSE = 0.5;

  /** Mean heat capacity, J/(kg K). */
  double cp;

  /** Derivative by the first temperature, J/(kg K²). */
  double d1;

  /** Derivative by the second temperature, J/(kg K²). */
  double d2;

  void evaluate(GasState one, GasState two) {
    double span = two.t - one.t;
    if (Math.abs(span) < CLOSE) {
      // Trapezoid with end correction (Euler and Maclaurin).
      cp = (one.cp + two.cp) / 2 - span / 12 * (two.dcp - one.dcp);
      d1 = one.dcp / 3 + two.dcp / 6;
      d2 = one.dcp / 6 + two.dcp / 3;
    } else {
      cp = (two.h - one.h) / span;
      d1 = (cp - one.cp) / span;
      d2 = (two.cp - cp) / span;
    }
  }
}
