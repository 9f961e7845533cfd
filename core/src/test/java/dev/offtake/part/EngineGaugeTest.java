package dev.offtake.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EngineGaugeTest {
  private static KindFacts facts(String shows, String shifts) {
    return new KindFacts()
        .with("shows", shows)
        .with("shifts", shifts)
        .with("counts", "mid tap")
        .with("counts also", "high tap");
  }

  private static Bench bench(String shows, String shifts, double mid, double high) {
    KindFacts facts = facts(shows, shifts);
    Part part = EngineGauge.KIND.build(facts);
    assertThat(facts.problems).isEmpty();
    return new Bench(part)
        .seen("mid tap", "share of core flow", mid)
        .seen("high tap", "share of core flow", high);
  }

  /** By hand: 2 % and 0.5 % of core flow make 2.5 times the stated shift. */
  @ParameterizedTest
  @CsvSource({
    "exhaust temperature, 6 degF, exhaust temperature 15 °F up",
    "fuel flow, 4 lb/min, fuel flow 10.0 lb/min up",
    "core speed, 0.2 %, core speed 0.5 % up",
    "core speed, -0.4 %, core speed 1 % down"
  })
  void movesByItsShiftForEachPercent(String shows, String each, String word) {
    Bench bench = bench(shows, each + " per 1 % of core flow", 0.02, 0.005);
    assertThat(bench.doing().word()).isEqualTo(word);
    assertThat(bench.doing().why()).startsWith("mid tap and high tap draw 2.5 % of core flow");
  }

  @Test
  void airTakenBackCountsAgainstIt() {
    Bench bench = bench("exhaust temperature", "9 degF per 1 % of core flow", -0.01, 0.03);
    double shift = ((EngineGauge) bench.part).shift(bench.view());
    assertThat(shift).isCloseTo(2 * 9 / 1.8, within(1e-9));
    assertThat(bench("fuel flow", "1 lb/min per 1 % of core flow", 0, 0).doing().word())
        .isEqualTo("fuel flow as without bleed");
  }

  @Test
  void saysThatItCannotKnowWithoutCoreFlow() {
    Bench bench = bench("fuel flow", "4 lb/min per 1 % of core flow", 0.02, Double.NaN);
    assertThat(bench.doing().regime()).isEqualTo("not known");
    assertThat(bench.doing().why()).contains("core flow", "high tap");
  }

  @ParameterizedTest
  @CsvSource({
    "exhaust temperature, 6 degF",
    "exhaust temperature, 6 lb/min per 1 % of core flow",
    "exhaust temperature, 900 degF per 1 % of core flow"
  })
  void refusesAShiftThatCannotBe(String shows, String shifts) {
    KindFacts facts = facts(shows, shifts);
    EngineGauge.KIND.build(facts);
    assertThat(facts.problems).singleElement().asString().startsWith("shifts");
  }
}
