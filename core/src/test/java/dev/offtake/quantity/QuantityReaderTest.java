package dev.offtake.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.quantity.Stated.Knowledge;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantityReaderTest {
  private static final double PSI = Units.PSI;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "32 psig                  | GAUGE_PRESSURE         | 220632.2334",
        "32 PSIG                  | GAUGE_PRESSURE         | 220632.2334",
        "14.696 psia              | ABSOLUTE_PRESSURE      | 101325.353",
        "0.3 psid                 | PRESSURE_DIFFERENCE    | 2068.427",
        "2 bar g                  | GAUGE_PRESSURE         | 200000",
        "2 barg                   | GAUGE_PRESSURE         | 200000",
        "3 bar a                  | ABSOLUTE_PRESSURE      | 300000",
        "3 bara                   | PRESSURE               | 300000",
        "200 kPa g                | PRESSURE               | 200000",
        "200 kPa(a)               | ABSOLUTE_PRESSURE      | 200000",
        "40 kPa                   | PRESSURE_DIFFERENCE    | 40000",
        "29.92 inHg               | ABSOLUTE_PRESSURE      | 101320.748",
        "1013.25 hPa              | ABSOLUTE_PRESSURE      | 101325",
        "4 inH2O                  | PRESSURE_DIFFERENCE    | 996.35564",
        "212 degF                 | TEMPERATURE            | 373.15",
        "212 °F                   | TEMPERATURE            | 373.15",
        "-40 F                    | TEMPERATURE            | 233.15",
        "-40 °C                   | TEMPERATURE            | 233.15",
        "518.67 degR              | TEMPERATURE            | 288.15",
        "288.15 K                 | TEMPERATURE            | 288.15",
        "18 degF                  | TEMPERATURE_DIFFERENCE | 10",
        "10 degC                  | TEMPERATURE_DIFFERENCE | 10",
        "100 lb/min               | MASS_FLOW              | 0.755987283",
        "3 lb/s                   | MASS_FLOW              | 1.36077711",
        "3600 kg/h                | MASS_FLOW              | 1",
        "60 kg/min                | MASS_FLOW              | 1",
        "5 g/s                    | MASS_FLOW              | 0.005",
        "3.4 in                   | LENGTH                 | 0.08636",
        "12,000 ft                | LENGTH                 | 3657.6",
        "35 mm                    | LENGTH                 | 0.035",
        "9 in²                    | AREA                   | 0.00580644",
        "9 in2                    | AREA                   | 0.00580644",
        "9 sq. in.                | AREA                   | 0.00580644",
        "2 ft3                    | VOLUME                 | 0.056633693",
        "5 l                      | VOLUME                 | 0.005",
        "62 %                     | SHARE                  | 0.62",
        "62 % core                | SHARE                  | 0.62",
        "12E4                     | NUMBER                 | 120000",
        "6,000 rpm                | SPEED                  | 100",
        "20 ms                    | TIME                   | 0.02",
        "2 h                      | TIME                   | 7200",
        "0.5 W/K                  | CONDUCTANCE            | 0.5",
        "100 Cv                   | VALVE_CAPACITY         | 86.5",
        "5 L/(s bar)              | SONIC_CONDUCTANCE      | 5e-8",
        "5e-8 m3/(s Pa)           | SONIC_CONDUCTANCE      | 5e-8",
        "100 lbf ft               | TORQUE                 | 135.5817948",
        "3 kg·m²                  | INERTIA                | 3",
        "180 deg                  | ANGLE                  | 3.141592654",
        "−3 psig                  | GAUGE_PRESSURE         | -20684.27",
      })
  void readsUnitsOfTheShop(String text, Dimension dimension, double si) throws QuantityProblem {
    Stated stated = QuantityReader.read(text, dimension);
    assertThat(stated.nominal()).isCloseTo(si, within(Math.abs(si) * 1e-7));
    assertThat(stated.low()).isEqualTo(stated.nominal()).isEqualTo(stated.high());
    assertThat(stated.knowledge()).isEqualTo(Knowledge.GIVEN);
    assertThat(stated.text()).isEqualTo(text.strip());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "32 psig +/- 3        | 32 | 29   | 35",
        "32 psig +/- 3 psi    | 32 | 29   | 35",
        "32 psig +/- 3 psig   | 32 | 29   | 35",
        "32 psig ± 3          | 32 | 29   | 35",
        "32 +/- 3 psig        | 32 | 29   | 35",
        "32 psig +/-3         | 32 | 29   | 35",
        "42 psig +4 -2        | 42 | 40   | 46",
        "42 psig -2 +4        | 42 | 40   | 46",
        "42 +4 -2 psig        | 42 | 40   | 46",
        "42 psig +0 -2        | 42 | 40   | 42",
        "40 psig +/- 5 % of value | 40 | 38 | 42",
        "25..35 psig          | 30 | 25   | 35",
        "25 psig .. 35 psig   | 30 | 25   | 35",
        "25 to 35 psig        | 30 | 25   | 35",
        "unknown 20..40 psig  | 30 | 20   | 40",
        "-2..4 psig           | 1  | -2   | 4",
      })
  void readsTolerancesAndRanges(String text, double nominal, double low, double high)
      throws QuantityProblem {
    Stated stated = QuantityReader.read(text + "; SD p.7", Dimension.GAUGE_PRESSURE);
    assertThat(stated.nominal() / PSI).isCloseTo(nominal, within(1e-9));
    assertThat(stated.low() / PSI).isCloseTo(low, within(1e-9));
    assertThat(stated.high() / PSI).isCloseTo(high, within(1e-9));
    assertThat(stated.source()).isEqualTo("SD p.7");
  }

  @Test
  void toleranceOfATemperatureIsADifference() throws QuantityProblem {
    Stated stated = QuantityReader.read("490 degF +/- 18", Dimension.TEMPERATURE);
    assertThat(stated.high() - stated.low()).isCloseTo(20, within(1e-9));
    Stated mixed = QuantityReader.read("490 degF +/- 10 degC", Dimension.TEMPERATURE);
    assertThat(mixed.high() - mixed.low()).isCloseTo(20, within(1e-9));
    Stated percent = QuantityReader.read("300 degF +/- 6 % of value", Dimension.TEMPERATURE);
    assertThat(percent.high() - percent.low()).isCloseTo(20, within(1e-9));
  }

  @Test
  void percentOfPercentMustBeSaid() throws QuantityProblem {
    Stated value = QuantityReader.read("62 % +/- 1 % of value", Dimension.SHARE);
    assertThat(value.high()).isCloseTo(0.6262, within(1e-12));
    Stated points = QuantityReader.read("62 % +/- 1 points", Dimension.SHARE);
    assertThat(points.high()).isCloseTo(0.63, within(1e-12));
    refused("62 % +/- 1 %", Dimension.SHARE, "percent of what", "1 points");
    refused("62 % +/- 1", Dimension.SHARE, "percent of what", "1 % of value");
    refused("62 psig +/- 1 %", Dimension.GAUGE_PRESSURE, "percent of what", "of value");
  }

  @Test
  void rangesAreBandsUnlessUnknown() throws QuantityProblem {
    assertThat(QuantityReader.read("25..35 psig", Dimension.GAUGE_PRESSURE).knowledge())
        .isEqualTo(Knowledge.BAND);
    assertThat(QuantityReader.read("unknown 4..8 psi", Dimension.PRESSURE_DIFFERENCE).unknown())
        .isTrue();
    Stated bare = QuantityReader.read("unknown; ask", Dimension.PRESSURE);
    assertThat(bare.unknown()).isTrue();
    assertThat(bare.nominal()).isNaN();
    assertThat(bare.source()).isEqualTo("ask");
    assertThat(bare.dimension()).isEqualTo(Dimension.GAUGE_PRESSURE);
  }

  @Test
  void pressureSaysWhetherItIsGaugeOrAbsolute() throws QuantityProblem {
    assertThat(QuantityReader.read("32 psig", Dimension.PRESSURE).dimension())
        .isEqualTo(Dimension.GAUGE_PRESSURE);
    assertThat(QuantityReader.read("32..40 psia", Dimension.PRESSURE).dimension())
        .isEqualTo(Dimension.ABSOLUTE_PRESSURE);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "32 psi       | GAUGE_PRESSURE      | gauge or absolute    | psig or psia",
        "32 psi       | PRESSURE            | gauge or absolute    | psig or psia",
        "2 bar        | ABSOLUTE_PRESSURE   | gauge or absolute    | bar g or bar a",
        "29.9 inHg    | PRESSURE            | gauge or absolute    | inHg g or inHg a",
        "32           | GAUGE_PRESSURE      | no unit              | psig or psia",
        "23 psia      | GAUGE_PRESSURE      | an absolute pressure | say psig",
        "23 psig      | ABSOLUTE_PRESSURE   | a gauge pressure     | say psia",
        "23 psig      | PRESSURE_DIFFERENCE | a gauge pressure     | say psi",
        "2 bar g      | ABSOLUTE_PRESSURE   | a gauge pressure     | say bar a",
        "23 psig      | MASS_FLOW           | not a mass flow      | lb/min",
        "52 ppm       | MASS_FLOW           | ppm                  | did you mean lb/min?",
        "52 lb/mim    | MASS_FLOW           | lb/mim               | did you mean lb/min?",
        "52 pisg      | GAUGE_PRESSURE      | pisg                 | did you mean psig?",
        "120 scfm     | MASS_FLOW           | at which temperature | reference day",
        "1,5 kg/s     | MASS_FLOW           | comma                | write 1.5",
        "1.234,5 kg/s | MASS_FLOW           | comma                | write 1234.5",
        "0,500 kg/s   | MASS_FLOW           | comma                | write 0.500",
        "1e99 kg/s    | MASS_FLOW           | beyond               | exponent",
        "1e-999 kg/s  | MASS_FLOW           | beyond               | exponent",
        "1e9999999999 kg/s | MASS_FLOW      | beyond               | exponent",
        "NaN kg/s     | MASS_FLOW           | not a number         | number",
        "Infinity kg/s | MASS_FLOW          | not a number         | number",
        "-5 psia      | ABSOLUTE_PRESSURE   | vacuum               | sign",
        "-30 psig     | GAUGE_PRESSURE      | vacuum               | sign",
        "-500 degF    | TEMPERATURE         | absolute zero        | sign",
        "35..25 psig  | GAUGE_PRESSURE      | backwards            | lower end first",
        "20 psig..40 psia | PRESSURE        | cannot run           | psig",
        "32 psig 4    | GAUGE_PRESSURE      | left over            | semicolon",
        "unknown 30 psig | GAUGE_PRESSURE   | unknown              | range",
        "5 lb/min at 30 psid | MASS_FLOW    | left over            | semicolon",
        "32 psig +/- 3 degF | GAUGE_PRESSURE | temperature         | psi",
        "30 psig +/- 2 % of full scale | GAUGE_PRESSURE | full scale | of value",
        "; SD p.7     | GAUGE_PRESSURE      | no value             | unknown",
        "fast         | TIME                | not a number         | number",
      })
  void refusalsTellHowToMend(String text, Dimension dimension, String wrong, String mend) {
    refused(text, dimension, wrong, mend);
  }

  @Test
  void standardFlowNeedsItsDay() throws QuantityProblem {
    // 14.696 psia and 59 °F: 1.2250 kg/m³ (standard sea level), times a cubic foot a minute.
    Stated flow = QuantityReader.read("120 scfm at 59 degF 14.696 psia; SD", Dimension.MASS_FLOW);
    assertThat(flow.nominal()).isCloseTo(120 * 1.2250 * 0.028316847 / 60, within(1e-5));
    Stated warm = QuantityReader.read("120 scfm at 14.696 psia, 70 degF", Dimension.MASS_FLOW);
    assertThat(warm.nominal() / flow.nominal()).isCloseTo(518.67 / 529.67, within(1e-9));
    Stated wide =
        QuantityReader.read("100..120 scfm at 59 degF and 14.696 psia", Dimension.MASS_FLOW);
    assertThat(wide.high()).isCloseTo(flow.nominal(), within(1e-12));
    refused("120 scfm at 59 degF", Dimension.MASS_FLOW, "missing", "number");
    refused("120 scfm at 59 degF 0 psia", Dimension.MASS_FLOW, "reference day", "14.696");
    refused("120 scfm", Dimension.GAUGE_PRESSURE, "mass flow", "gauge pressure");
  }

  @Test
  void readsLimitsWithDelay() throws QuantityProblem {
    QuantityReader.Timed limit =
        QuantityReader.readLimit("490 degF for 3 s; SD p.9", Dimension.TEMPERATURE);
    assertThat(limit.seconds()).isEqualTo(3);
    assertThat(limit.value().source()).isEqualTo("SD p.9");
    assertThat(limit.value().text()).isEqualTo("490 degF");
    QuantityReader.Timed either =
        QuantityReader.readLimit("60 psig", Dimension.TEMPERATURE, Dimension.GAUGE_PRESSURE);
    assertThat(either.seconds()).isZero();
    assertThat(either.value().dimension()).isEqualTo(Dimension.GAUGE_PRESSURE);
    assertThatExceptionOfType(QuantityProblem.class)
        .isThrownBy(() -> QuantityReader.readLimit("60 psig for -3 s", Dimension.PRESSURE))
        .satisfies(problem -> assertThat(problem.wrong()).contains("delay"));
    assertThatExceptionOfType(QuantityProblem.class)
        .isThrownBy(() -> QuantityReader.readLimit("6 in", Dimension.PRESSURE, Dimension.SHARE));
  }

  @Test
  void readsValuesWithTheirCondition() throws QuantityProblem {
    QuantityReader.Conditioned leak =
        QuantityReader.readAt(
            "0..0.2 lb/min at 30 psid; SD p.6", Dimension.MASS_FLOW, Dimension.PRESSURE_DIFFERENCE);
    assertThat(leak.at().nominal()).isCloseTo(30 * PSI, within(1e-6));
    assertThat(leak.value().high()).isCloseTo(0.2 * Units.POUND / 60, within(1e-12));
    assertThat(leak.value().source()).isEqualTo("SD p.6");
    assertThatExceptionOfType(QuantityProblem.class)
        .isThrownBy(
            () ->
                QuantityReader.readAt(
                    "0.2 lb/min", Dimension.MASS_FLOW, Dimension.PRESSURE_DIFFERENCE))
        .satisfies(problem -> assertThat(problem.mend()).contains("pressure difference"));
  }

  @Test
  void sourceStartsAtTheFirstSemicolon() {
    assertThat(QuantityReader.split(" 32 psig ; SD p.7; note 2 "))
        .isEqualTo(new QuantityReader.Split("32 psig", "SD p.7; note 2"));
    assertThat(QuantityReader.split("32 psig").source()).isEmpty();
  }

  private static void refused(String text, Dimension dimension, String wrong, String mend) {
    assertThatExceptionOfType(QuantityProblem.class)
        .isThrownBy(() -> QuantityReader.read(text, dimension))
        .satisfies(problem -> assertThat(problem.wrong()).contains(wrong))
        .satisfies(problem -> assertThat(problem.mend()).contains(mend));
  }
}
