package dev.offtake.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.offtake.air.GasState;
import dev.offtake.heat.CylinderLoss;
import dev.offtake.heat.DuctHeat;
import org.junit.jupiter.api.Test;

/** Heat loss of ducts. */
class DuctHeatCheckTest {

  private static GasState air(double t, double cp) {
    GasState air = new GasState();
    air.set(0, t);
    air.cp = cp; // the heat capacity that the example uses
    return air;
  }

  /** Own case: 0.1 m bare duct of 5 m at 12 W/(m² K). */
  @Test
  void bareBleedDuctIsTheClosedForm() {
    DuctHeat duct = new DuctHeat();
    duct.evaluate(0.8, air(573.15, 1030), 288.15, 18.849556);
    assertThat(duct.t).isCloseTo(566.704437, within(6e-7));
    assertThat(0.8 * 1030 * (573.15 - duct.t)).isCloseTo(5311.1438, withinPercentage(1e-5));
  }

  /**
   * Çengel, Heat Transfer, example 8-6, attic duct of 0.2 m by 0.2 m by 8 m (result from memory):
   * 71.3 °C and 1313 W. The inside coefficient is the example's, as recomputed: 13.4926 W/(m² K).
   */
  @Test
  void agreesWithTheTextbookAtticDuct() {
    double flow = 0.9994 * 0.15;
    DuctHeat duct = new DuctHeat();
    duct.evaluate(flow, air(353.15, 1008), 333.15, 13.4926 * 0.8 * 8);
    assertThat(duct.t - 273.15).isCloseTo(71.3, withinPercentage(0.5));
    assertThat(duct.t - 273.15).isCloseTo(71.2940, within(1e-3));
    assertThat(flow * 1008 * (353.15 - duct.t)).isCloseTo(1313, withinPercentage(0.5));
  }

  /**
   * Çengel, Heat Transfer, problem 8-41, duct of 0.15 m by 0.15 m by 10 m (answer from memory):
   * 75.7 °C and 941 W, coefficient as recomputed: 16.3724 W/(m² K).
   */
  @Test
  void agreesWithTheTextbookProblem() {
    double flow = 0.9994 * 0.1;
    DuctHeat duct = new DuctHeat();
    duct.evaluate(flow, air(358.15, 1008), 343.15, 16.3724 * 0.6 * 10);
    assertThat(duct.t - 273.15).isCloseTo(75.7, withinPercentage(0.5));
    assertThat(flow * 1008 * (358.15 - duct.t)).isCloseTo(941, withinPercentage(0.5));
  }

  /**
   * Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, example 9.4 (notebook Chapter_9
   * of FOSSEE/Python-Textbook-Companions): bare steam pipe of 0.1 m at 165 °C in a room of 23 °C
   * loses 763 W/m.
   */
  @Test
  void agreesWithTheTextbookSteamPipe() {
    CylinderLoss pipe = new CylinderLoss(0.1, 1, 0, 0.05, 0.85);
    double heat = pipe.conductance(438.15, 296.15, 101325) * (438.15 - 296.15);
    assertThat(heat).isCloseTo(763, withinPercentage(0.5));
  }
}
