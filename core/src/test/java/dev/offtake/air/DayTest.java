package dev.offtake.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class DayTest {

  @Test
  void standardDayIsSeaLevelAtRest() {
    assertThat(Day.STANDARD).isEqualTo(new Day(101325, 288.15, 0));
    assertThat(Day.STANDARD.theta()).isEqualTo(1);
    assertThat(Day.STANDARD.delta()).isEqualTo(1);
  }

  @Test
  void deviationMovesTemperatureOnly() {
    Day hot = Day.deviating(3000, 15);
    assertThat(hot.pressure()).isEqualTo(Day.at(3000).pressure());
    assertThat(hot.temperature()).isEqualTo(Day.at(3000).temperature() + 15);
  }

  /** With γ of 1.4 a Mach number of 0.8 gives 1.128 and 1.52434 (closed form). */
  @Test
  void ramFollowsTheStaticAir() {
    Day flight = Day.at(11000).withMach(0.8);
    double gamma = Air.gamma(flight.temperature());
    double ratio = 1 + (gamma - 1) / 2 * 0.64;
    assertThat(flight.inletTemperature()).isCloseTo(216.65 * ratio, within(1e-10));
    double pressures = flight.inletPressure() / flight.pressure();
    assertThat(Math.log(pressures)).isCloseTo(gamma / (gamma - 1) * Math.log(ratio), within(1e-13));
    assertThat(pressures).isCloseTo(1.52434, within(2e-3));
    assertThat(flight.theta()).isGreaterThan(Day.at(11000).theta());
  }

  @Test
  void speedsAreInverse() {
    Day day = Day.deviating(1000, -20).withMach(0.4);
    assertThat(day.physicalSpeed(day.correctedSpeed(87))).isCloseTo(87, within(1e-12));
  }

  @Property(tries = 200, seed = "4")
  void altitudeInvertsPressure(@ForAll @DoubleRange(min = -5000, max = 32000) double altitude) {
    double found = Atmosphere.altitude(Atmosphere.pressure(altitude));
    assertThat(found).isCloseTo(altitude, within(1e-7));
  }

  @Test
  void qnhOfTheStandardDayIsPressureAltitude() {
    Day day = Day.qnh(101325, 1200, 280);
    assertThat(day.pressure()).isCloseTo(Atmosphere.pressure(1200), within(1e-8));
  }

  @Test
  void altimeterSetToQnhShowsTheElevation() {
    Day day = Day.qnh(98500, 640, 295);
    double shown = Atmosphere.altitude(day.pressure()) - Atmosphere.altitude(98500);
    assertThat(shown).isCloseTo(640, within(1e-8));
  }

  @Test
  void refusesWhatCannotBe() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Day.station(-5, 288))
        .withMessageContaining("give it absolute");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Day.station(101325, Double.NaN))
        .withMessageContaining("above 0 K");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Day.STANDARD.withMach(1.2))
        .withMessageContaining("between 0 and 1");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Day.at(40000))
        .withMessageContaining("check its unit");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Atmosphere.altitude(0))
        .withMessageContaining("gauge pressure");
  }
}
