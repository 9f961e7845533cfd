package dev.offtake.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.quantity.Dimension;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class GaugeTest {
  private static final double CABIN = 11.5 * Bench.PSI;

  private static KindFacts pressure(String relative) {
    return new KindFacts()
        .with("reads", new Facts.Reading("duct", false))
        .with("scale", "0..80 psig")
        .with("good to", "1 psi")
        .with("relative to", relative);
  }

  private static Bench bench(KindFacts facts, double psig) {
    Part gauge = Gauge.KIND.build(facts);
    assertThat(facts.problems).isEmpty();
    return new Bench(gauge).at("duct", psig, 500);
  }

  private static double shows(Bench bench) {
    return ((Gauge) bench.part).shows(0, bench.view());
  }

  @Test
  void readsAgainstTheAirOutsideItsBiasIncluded() {
    Bench bench = bench(pressure("ambient"), 32);
    assertThat(shows(bench)).isCloseTo(32 * Bench.PSI, within(1e-6));
    bench.parameter(Gauge.BIAS, -2 * Bench.PSI);
    assertThat(bench.doing().word()).isEqualTo("30.0 psig");
  }

  @Test
  void absoluteGaugeReadsFromVacuum() {
    Bench bench = bench(pressure("absolute").with("scale", "0..100 psia"), 20);
    assertThat(shows(bench)).isCloseTo(101325 + 20 * Bench.PSI, within(1e-6));
    assertThat(bench.doing().word()).isEqualTo("34.7 psia");
  }

  /** At height, 3.5 psia outside and 11.5 psia in the cabin: the cabin's gauge reads 8 psi less. */
  @Test
  void cabinGaugeReadsAgainstTheCabinAtAnyHeight() {
    KindFacts facts = pressure("cabin").si("zero at", CABIN, Dimension.ABSOLUTE_PRESSURE);
    Bench bench = bench(facts, 0);
    bench.e.conditions =
        new Conditions(3.5 * Bench.PSI, 220, 3.5 * Bench.PSI, 220, 0.9, 0.8, false);
    bench.at("duct", (3.5 + 30) - Bench.AMBIENT / Bench.PSI, 500);
    assertThat(shows(bench)).isCloseTo((3.5 + 30 - 11.5) * Bench.PSI, within(1e-6));
    assertThat(bench.doing().why()).isEqualTo("static pressure against cabin at 11.5 psia");
  }

  @Test
  void cellGaugeMayCountFromADepressionOfTheCell() {
    KindFacts facts = pressure("cell").si("zero at", -0.2 * Bench.PSI, Dimension.GAUGE_PRESSURE);
    assertThat(shows(bench(facts, 32))).isCloseTo(32.2 * Bench.PSI, within(1e-6));
  }

  @ParameterizedTest
  @ValueSource(strings = {"cabin", "cell"})
  void refusesACabinOrCellWithoutPressure(String relative) {
    KindFacts facts = pressure(relative);
    Gauge.KIND.build(facts);
    assertThat(facts.problems)
        .containsExactly("relative to: nothing says what pressure the " + relative + " has");
  }

  @Test
  void refusesAZeroThatNothingCountsFrom() {
    KindFacts outside = pressure("ambient").si("zero at", CABIN, Dimension.ABSOLUTE_PRESSURE);
    Gauge.KIND.build(outside);
    KindFacts warm =
        new KindFacts()
            .with("reads", new Facts.Reading("duct", true))
            .with("good to", "5 degF")
            .with("relative to", "cabin");
    Gauge.KIND.build(warm);
    assertThat(outside.problems).singleElement().asString().startsWith("zero at");
    assertThat(warm.problems).singleElement().asString().contains("thermometer");
  }

  @ParameterizedTest
  @CsvSource({
    "-3, '0.0 psig, pegged', pegged",
    "90, '80.0 psig, pegged', pegged",
    "41.2, 41.2 psig, reads"
  })
  void pegsAtTheEndsOfItsScale(double psig, String word, String regime) {
    Doing doing = bench(pressure("ambient"), psig).doing();
    assertThat(doing.word()).isEqualTo(word);
    assertThat(doing.regime()).isEqualTo(regime);
  }

  @Test
  void showsItsNeedlesBesideTheirMarks() {
    KindFacts facts = pressure("ambient").with("reads", null);
    facts.with(
        "needles",
        List.of(
            new Facts.Needle("L", new Facts.Reading("left duct", false)),
            new Facts.Needle("R", new Facts.Reading("right duct", false))));
    Bench bench = bench(facts, 0).at("left duct", 15, 500).at("right duct", 22, 500);
    assertThat(bench.doing().word()).isEqualTo("L 15.0 psig, R 22.0 psig");
  }

  /** Plain error: three quarters of it are the same at each reading. */
  @Test
  void splitsAPlainError() {
    Gauge gauge = (Gauge) Gauge.KIND.build(pressure("ambient"));
    assertThat(gauge.parameters().get(Gauge.BIAS).high()).isCloseTo(0.75 * Bench.PSI, within(1e-6));
    assertThat(gauge.each()).isCloseTo(0.25 * Bench.PSI, within(1e-6));
  }
}
