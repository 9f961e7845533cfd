package dev.offtake.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.offtake.air.Atmosphere;
import dev.offtake.air.Day;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The U.S. Standard Atmosphere 1976 and corrected quantities. */
class AtmosphereCheckTest {
  private static final double FOOT = 0.3048;

  /** Recomputed from the constants of the standard, geopotential altitude, printed to 1 mPa. */
  @ParameterizedTest
  @CsvSource({
    "0, 288.150, 101325.000",
    "2000, 275.150, 79495.216",
    "5000, 255.650, 54019.912",
    "10000, 223.150, 26436.268",
    "11000, 216.650, 22632.064",
    "15000, 216.650, 12044.571",
    "20000, 216.650, 5474.889"
  })
  void agreesWithTheRecomputedTable(double altitude, double t, double p) {
    assertThat(Atmosphere.temperature(altitude)).isCloseTo(t, within(1e-9));
    assertThat(Atmosphere.pressure(altitude)).isCloseTo(p, within(6e-4));
  }

  /** Bases of the layers as printed at https://www.av8n.com/physics/altimetry.htm. */
  @ParameterizedTest
  @CsvSource({"11000, 216.65, 22632.1", "20000, 216.65, 5474.89", "32000, 228.65, 868.019"})
  void agreesWithThePrintedLayers(double altitude, double t, double p) {
    assertThat(Atmosphere.temperature(altitude)).isCloseTo(t, within(1e-9));
    assertThat(Atmosphere.pressure(altitude)).isCloseTo(p, within(5e-6 * p));
  }

  /**
   * Mechanical Engineers' Handbook volume 4, table 6, geometric altitude turned into geopotential
   * here by H = r₀Z/(r₀ + Z): altitude, temperature, pressure in bar to four decimals.
   */
  @ParameterizedTest
  @CsvSource({
    "2000, 275.15, 0.7950",
    "5000, 255.68, 0.5405",
    "10000, 223.25, 0.2650",
    "11000, 216.77, 0.2270"
  })
  void agreesWithThePrintedHandbook(double geometric, double t, double bar) {
    double altitude = 6356766 * geometric / (6356766 + geometric);
    assertThat(Atmosphere.temperature(altitude)).isCloseTo(t, within(0.006));
    assertThat(Atmosphere.pressure(altitude)).isCloseTo(1e5 * bar, within(5.1));
  }

  /** Recomputed from the constants of the standard: feet, K, Pa, delta, theta. */
  @ParameterizedTest
  @CsvSource({
    "0, 288.150, 101325.00, 1.000000, 1.000000",
    "10000, 268.338, 69681.66, 0.687705, 0.931244",
    "20000, 248.526, 46563.26, 0.459544, 0.862488",
    "30000, 228.714, 30089.59, 0.296961, 0.793732",
    "35000, 218.808, 23842.30, 0.235305, 0.759355",
    "39000, 216.650, 19677.32, 0.194200, 0.751865",
    "41000, 216.650, 17873.87, 0.176401, 0.751865",
    "45000, 216.650, 14747.68, 0.145548, 0.751865"
  })
  void agreesWithThePressureAltitudesOfFlight(
      double feet, double t, double p, double delta, double theta) {
    Day day = Day.at(feet * FOOT);
    assertThat(day.temperature()).isCloseTo(t, within(1e-9));
    assertThat(day.pressure()).isCloseTo(p, within(0.006));
    assertThat(day.delta()).isCloseTo(delta, within(6e-7));
    assertThat(day.theta()).isCloseTo(theta, within(6e-7));
    assertThat(Atmosphere.altitude(day.pressure())).isCloseTo(feet * FOOT, within(1e-7));
  }

  /** Own case: 303.15 K, 95 kPa, 10 000 rpm and 20 kg/s. */
  @Test
  void correctsSpeedAndFlow() {
    Day day = Day.station(95e3, 303.15);
    assertThat(day.theta()).isCloseTo(1.0520562, within(6e-8));
    assertThat(day.delta()).isCloseTo(0.9375771, within(6e-8));
    assertThat(day.correctedSpeed(10000)).isCloseTo(9749.4592, within(6e-5));
    double flow = 20 * Math.sqrt(day.theta()) / day.delta();
    assertThat(flow).isCloseTo(21.8797561, within(6e-8));
  }

  /** Own case, stated in the design: 62 % physical at −20 °C is 66 % corrected. */
  @Test
  void correctsAColdDay() {
    Day day = Day.station(101325, 253.15);
    assertThat(day.correctedSpeed(62)).isCloseTo(66.1, within(0.1));
  }

  /** Own case, stated in the design: station or QNH is 2.5 psi of difference at 5000 ft. */
  @Test
  void tellsStationPressureFromQnh() {
    double psi = 6894.757293168;
    Day qnh = Day.qnh(101325, 5000 * FOOT, 288.15);
    Day station = Day.station(101325, 288.15);
    assertThat((station.pressure() - qnh.pressure()) / psi).isCloseTo(2.5, withinPercentage(2));
  }
}
