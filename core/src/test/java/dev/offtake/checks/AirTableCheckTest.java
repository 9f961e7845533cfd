package dev.offtake.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.offtake.air.Air;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Ideal-gas air against recomputed and printed tables. */
class AirTableCheckTest {

  /**
   * Recomputed from the polynomials of the four constituents in NASA/TP-2002-211556 (mole fractions
   * N2 0.78084, O2 0.209476, Ar 0.009365, CO2 0.000319) with the gas constant of the report, which
   * lies 5.7e-6 above ours: hence 1e-4 (and 0.1 J/kg near zero).
   */
  @ParameterizedTest
  @CsvSource({
    "200, 1002.393, 1.401281, -100.3257, -0.406754",
    "250, 1003.088, 1.400892, -50.1920, -0.183017",
    "298.15, 1004.727, 1.399976, -1.8588, -0.006215",
    "300, 1004.817, 1.399926, 0.0000, 0.000000",
    "350, 1008.168, 1.398068, 50.3169, 0.155121",
    "400, 1013.451, 1.395172, 100.8491, 0.290066",
    "450, 1020.649, 1.391295, 151.6940, 0.409831",
    "500, 1029.537, 1.386611, 202.9423, 0.517814",
    "600, 1051.001, 1.375749, 306.9366, 0.707358",
    "700, 1074.908, 1.364346, 413.2233, 0.871153",
    "800, 1098.732, 1.353653, 521.9143, 1.016254",
    "900, 1120.892, 1.344254, 632.9129, 1.146966",
    "1000, 1141.018, 1.336140, 746.0235, 1.266121",
    "1200, 1174.624, 1.323414, 977.7451, 1.477267",
    "1500, 1210.981, 1.310687, 1335.9226, 1.743533",
    "2000, 1250.317, 1.298000, 1952.0457, 2.097758"
  })
  void agreesWithTheMixtureOfItsConstituents(
      double t, double cp, double gamma, double kilojoules, double s0) {
    assertThat(Air.cp(t)).isCloseTo(cp, within(1e-4 * cp));
    assertThat(Air.gamma(t)).isCloseTo(gamma, within(1e-4 * gamma));
    double h = 1e3 * kilojoules;
    assertThat(Air.h(t) - Air.h(300)).isCloseTo(h, within(1e-4 * Math.abs(h) + 0.1));
    assertThat(Air.s0(t) - Air.s0(300)).isCloseTo(1e3 * s0, within(0.1 * Math.abs(s0) + 1e-3));
  }

  /**
   * Keenan and Kaye's air table, as in the appendices of the common textbooks of thermodynamics
   * (from memory). Known to differ from the constituents by 0.06 % of enthalpy and 0.1 % of pr.
   */
  @ParameterizedTest
  @CsvSource({
    "400, 400.98, 3.806",
    "500, 503.02, 8.411",
    "600, 607.02, 16.28",
    "800, 821.95, 47.75",
    "1000, 1046.04, 114"
  })
  void agreesWithThePrintedAirTable(double t, double h, double pr) {
    double difference = 1e3 * (h - 300.19);
    assertThat(Air.h(t) - Air.h(300)).isCloseTo(difference, withinPercentage(0.07));
    double ratio = Math.exp((Air.s0(t) - Air.s0(300)) / Air.R);
    assertThat(ratio).isCloseTo(pr / 1.386, withinPercentage(0.11));
  }

  /**
   * NBS Circular 564 as printed at
   * http://www.ent.ohiou.edu/~thermo/me321/Potter/specific_heat/air_Cp_Cv.html, three decimals.
   */
  @ParameterizedTest
  @CsvSource({
    "250, 1.003, 1.401",
    "300, 1.005, 1.400",
    "350, 1.008, 1.398",
    "400, 1.013, 1.395",
    "450, 1.020, 1.391",
    "500, 1.029, 1.387",
    "600, 1.051, 1.376",
    "700, 1.075, 1.364",
    "800, 1.099, 1.354",
    "900, 1.121, 1.344",
    "1000, 1.142, 1.336"
  })
  void agreesWithThePrintedHeatCapacities(double t, double cp, double gamma) {
    assertThat(Air.cp(t) / 1e3).isCloseTo(cp, within(0.001));
    assertThat(Air.gamma(t)).isCloseTo(gamma, within(0.001));
  }

  /** R of the mixture is 287.0509 J/(kg K) with the SI of 2019. */
  @Test
  void hasTheGasConstantOfTheMixture() {
    assertThat(Air.R).isCloseTo(287.0509, within(5e-5));
  }
}
