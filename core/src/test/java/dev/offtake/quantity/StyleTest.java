package dev.offtake.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StyleTest {
  private final Locale before = Locale.getDefault();

  @AfterEach
  void restoreLanguage() {
    Locale.setDefault(before);
  }

  @ParameterizedTest
  @CsvSource(
      value = {
        "159268.9 | GAUGE_PRESSURE         | 23.1 psig   | 1.59 bar g",
        "101325   | ABSOLUTE_PRESSURE      | 14.7 psia   | 1.01 bar a",
        "103421.4 | PRESSURE_DIFFERENCE    | 15.0 psi    | 1.03 bar",
        "-1       | GAUGE_PRESSURE         | 0.0 psig    | 0.00 bar g",
        "373.15   | TEMPERATURE            | 212 °F      | 100 °C",
        "255.3    | TEMPERATURE            | 0 °F        | -18 °C",
        "10       | TEMPERATURE_DIFFERENCE | 18 °F       | 10 °C",
        "0.394625 | MASS_FLOW              | 52.2 lb/min | 0.395 kg/s",
        "-0.0001  | MASS_FLOW              | 0.0 lb/min  | 0.000 kg/s",
        "0.08636  | LENGTH                 | 3.4 in      | 86.4 mm",
        "0.001548 | AREA                   | 2.4 in²     | 1548 mm²",
        "0.62     | SHARE                  | 62 %        | 62 %",
        "0.796    | SHARE                  | 79.6 %      | 79.6 %",
        "1        | SHARE                  | 100 %       | 100 %",
        "100      | SPEED                  | 6000 rpm    | 6000 rpm",
        "3        | TIME                   | 3 s         | 3 s",
        "0.02     | TIME                   | 0.02 s      | 0.02 s",
        "0.7      | NUMBER                 | 0.7         | 0.7",
        "NaN      | MASS_FLOW              | unknown     | unknown",
      },
      delimiter = '|')
  void printsForTheShop(double si, Dimension dimension, String shop, String metric) {
    assertThat(Style.SHOP.print(si, dimension)).isEqualTo(shop);
    assertThat(Style.METRIC.print(si, dimension)).isEqualTo(metric);
  }

  @Test
  void printsAlikeInEveryLanguage() {
    Locale.setDefault(Locale.GERMANY);
    assertThat(Style.SHOP.print(1e8, Dimension.ABSOLUTE_PRESSURE)).isEqualTo("14503.8 psia");
    Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
    assertThat(Style.SHOP.number(0.796, Dimension.SHARE)).isEqualTo("79.6");
  }

  @Test
  void printsRanges() throws QuantityProblem {
    Stated set = QuantityReader.read("42 psig +4 -2", Dimension.GAUGE_PRESSURE);
    assertThat(Style.SHOP.print(set)).isEqualTo("40.0..46.0 psig");
    assertThat(Style.SHOP.print(Stated.of(0.62, Dimension.SHARE))).isEqualTo("62 %");
  }

  @Test
  void aPressureMustSayWhichItIs() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Style.SHOP.unit(Dimension.PRESSURE))
        .withMessageContaining("gauge or absolute");
  }
}
