package dev.offtake.system;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.air.Atmosphere;
import dev.offtake.air.Day;
import dev.offtake.quantity.QuantityProblem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A day in one line means what the same words mean in a file. */
class DayLineTest {
  private static final double INHG = 3386.389;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "35000 ft, ISA +10 degF, Mach 0.78",
        "Mach 0.78, 35,000 ft, ISA +10 degF",
        "ISA +10 degF,35000 ft,Mach 0.78"
      })
  void altitudeDeviationAndMachInAnyOrder(String text) throws QuantityProblem {
    Day expected = Day.deviating(35000 * 0.3048, 10 / 1.8).withMach(0.78);
    Day day = BleedSystem.dayOf(text);
    assertThat(day.pressure()).isCloseTo(expected.pressure(), within(1e-6));
    assertThat(day.temperature()).isCloseTo(expected.temperature(), within(1e-9));
    assertThat(day.mach()).isEqualTo(0.78);
  }

  @Test
  void aBarometerOfTheStation() throws QuantityProblem {
    Day day = BleedSystem.dayOf("29.71 inHg station, 41 degF");
    assertThat(day.pressure()).isCloseTo(29.71 * INHG, within(1.0));
    assertThat(day.temperature()).isCloseTo(278.15, within(1e-9));
  }

  /** At 5,000 ft the two readings of one barometer differ by 2.5 psi (own case). */
  @Test
  void qnhIsNotStationPressure() throws QuantityProblem {
    Day qnh = BleedSystem.dayOf("29.92 inHg QNH at 5,000 ft, 41 degF");
    Day station = BleedSystem.dayOf("29.92 inHg station, 41 degF");
    assertThat((station.pressure() - qnh.pressure()) / 6894.757).isCloseTo(2.47, within(0.05));
    assertThat(qnh.pressure()).isCloseTo(Atmosphere.pressure(1524), within(30.0));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "29.71 inHg, 41 degF | station pressure or QNH",
        "29.71 inHg station | not how warm the air is",
        "41 degF | neither an altitude nor a barometer",
        "99999 ft | is no air that an engine breathes",
        "35000 ft, 29.71 inHg station, 41 degF | both an altitude and a barometer",
        "12 furlongs | is no altitude",
        "35000 ft, 31000 ft | gives its altitude twice",
        "350000 ft | is no air that an engine breathes",
        "0 ft, Mach 7 | is no air that an engine breathes",
        "0 ft, | is no altitude",
        "QNH at 1200 ft | is no altitude"
      })
  void whatIsMissingIsAskedBack(String text, String wrong) {
    assertThatThrownBy(() -> BleedSystem.dayOf(text))
        .isInstanceOfSatisfying(
            QuantityProblem.class,
            problem -> {
              assertThat(problem.wrong()).contains(wrong);
              assertThat(problem.mend()).isNotBlank();
            });
  }
}
