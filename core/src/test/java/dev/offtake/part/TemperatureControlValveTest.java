package dev.offtake.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.quantity.Dimension;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TemperatureControlValveTest {
  private static BenchFacts facts() {
    return new BenchFacts(TemperatureControlValve.KIND)
        .say("watches", new Facts.Reading("duct", true))
        .si("from", 470, Dimension.TEMPERATURE)
        .si("to", 500, Dimension.TEMPERATURE);
  }

  private static Bench bench(BenchFacts facts, double t) {
    return new Bench(facts.build()).at("ahead", 5, 330).at("behind", 0, 340).at("duct", 30, t);
  }

  @ParameterizedTest
  @CsvSource({"460, 0", "476, 0.2", "485, 0.5", "510, 1"})
  void movesWithTemperatureInEitherSense(double t, double opening) {
    assertThat(bench(facts(), t).observed(0)).isCloseTo(opening, within(1e-12));
    assertThat(bench(facts().say("as it warms", "shuts"), t).observed(0))
        .isCloseTo(1 - opening, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource({"460", "476", "485", "499", "510"})
  void partialsAgreeWithDifferences(double t) {
    assertThat(bench(facts(), t).worstPartial()).isLessThan(1e-5);
    assertThat(bench(facts().say("as it warms", "shuts"), t).worstPartial()).isLessThan(1e-5);
  }

  @Test
  void mayWatchTheAirThatItPasses() {
    BenchFacts facts = facts().say("watches", new Facts.Reading("behind", true));
    Bench bench = new Bench(facts.build()).at("ahead", 5, 500).at("behind", 0, 480);
    assertThat(bench.run().variables).hasSize(4);
    assertThat(bench.worstPartial()).isLessThan(1e-5);
  }

  @Test
  void tellsRangeAndCommand() {
    Bench bench = bench(facts().say("shut when", "fan air is OFF"), 485);
    assertThat(bench.doing().regime()).isEqualTo("controlling");
    assertThat(bench.doing().why()).startsWith("duct 485 K is within its 470 to 500 K");
    bench.control(1, 0);
    assertThat(bench.doing().why()).isEqualTo("fan air is OFF");
    assertThat(bench.partial(bench.temperatureVariable("duct"))).isZero();
  }

  @Test
  void refusesAPressureToWatch() {
    BenchFacts facts = facts().say("watches", new Facts.Reading("duct", false));
    facts.si("to", 460, Dimension.TEMPERATURE).build();
    assertThat(facts.problems).containsExactly("watches", "to");
  }
}
