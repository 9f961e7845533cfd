package dev.offtake.part;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OpeningsTest {
  @ParameterizedTest
  @CsvSource({
    "0, shut",
    "0.009, shut",
    "0.03, just open",
    "0.3, about 1/3 open",
    "0.27, about 1/4 open",
    "0.97, about 9/10 open",
    "0.995, open",
    "1, open"
  })
  void namesOpeningsAsAShopWould(double opening, String word) {
    assertThat(Openings.word(opening)).isEqualTo(word);
  }

  @ParameterizedTest
  @CsvSource({"8.1 psig, 8.1", "-3 psi, -3", "none, none"})
  void takesTheUnitOff(String printed, String bare) {
    assertThat(Openings.bare(printed)).isEqualTo(bare);
  }
}
