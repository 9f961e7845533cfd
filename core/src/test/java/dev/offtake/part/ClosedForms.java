package dev.offtake.part;

import dev.offtake.air.Air;
import dev.offtake.air.GasState;

/** Laws as textbooks print them, written without the code that the parts use. */
public final class ClosedForms {
  private ClosedForms() {}

  /** γ of air at a temperature in K. */
  public static double gamma(double t) {
    GasState gas = new GasState();
    gas.set(0, t);
    return gas.gamma;
  }

  /**
   * Flow of an ideal nozzle, kg/s: Saint-Venant and Wantzel's formula, choked below the critical
   * ratio (2/(γ+1))^(γ/(γ−1)).
   *
   * @param area effective area, m²
   * @param p1 total pressure ahead, Pa
   * @param t1 total temperature ahead, K
   * @param p2 pressure behind, Pa
   */
  public static double nozzle(double area, double p1, double t1, double p2) {
    double g = gamma(t1);
    double r = Math.max(p2 / p1, critical(t1));
    double psi = Math.sqrt(2 * g / (g - 1) * (Math.pow(r, 2 / g) - Math.pow(r, (g + 1) / g)));
    return area * p1 / Math.sqrt(Air.R * t1) * psi;
  }

  /** Critical pressure ratio at a temperature in K. */
  public static double critical(double t) {
    double g = gamma(t);
    return Math.pow(2 / (g + 1), g / (g - 1));
  }

  /** Area of a circle, m². */
  public static double circle(double diameter) {
    return Math.PI * diameter * diameter / 4;
  }
}
