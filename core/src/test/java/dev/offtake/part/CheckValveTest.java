package dev.offtake.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Stated;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CheckValveTest {
  private static BenchFacts facts() {
    return new BenchFacts(CheckValve.KIND)
        .si("cracks at", 0.3 * Bench.PSI, Dimension.PRESSURE_DIFFERENCE);
  }

  private static Bench bench(double ahead, double behind) {
    return new Bench(facts().build()).at("ahead", ahead, 400).at("behind", behind, 430);
  }

  @Test
  void opensBetweenCrackingAndHalfAPsiMore() {
    assertThat(bench(10.2, 10).observed(0)).isZero();
    assertThat(bench(10.55, 10).observed(0)).isCloseTo(0.5, within(1e-9));
    assertThat(bench(12, 10).observed(0)).isEqualTo(1);
  }

  @Test
  void passesItsStatedBackLeakInReverse() {
    BenchFacts facts = facts();
    facts.say(
        "back leak",
        new Facts.At(
            Stated.of(0.0015, Dimension.MASS_FLOW),
            Stated.of(30 * Bench.PSI, Dimension.PRESSURE_DIFFERENCE)));
    Bench bench = new Bench(facts.build()).at("ahead", 0, 288.15).at("behind", 30, 288.15);
    assertThat(bench.run().mdot).isCloseTo(-0.0015, within(1e-9));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-15, -0.01, 0.1, 0.31, 0.55, 0.79, 1.5, 40})
  void partialsAgreeWithDifferences(double drop) {
    assertThat(bench(20 + drop, 20).worstPartial()).isLessThan(1e-5);
  }

  @Test
  void stuckWinsOverItsOwnForcesAndLeakStays() {
    Bench bench = bench(10, 25).parameter(ValveBody.STUCK, 1);
    assertThat(bench.run().mdot).isLessThan(-1);
    assertThat(bench.worstPartial()).isLessThan(1e-5);
    assertThat(bench.doing().regime()).isEqualTo("stuck");
    bench.control(ValveBody.LOCK, ValveBody.CAPPED);
    assertThat(bench.run().mdot).isBetween(-1e-3, -1e-9);
  }

  @Test
  void saysWhatHoldsItShut() {
    Doing doing = bench(8.1, 23.1).doing();
    assertThat(doing.regime()).isEqualTo("shut");
    assertThat(doing.word()).isEqualTo("shut");
    assertThat(doing.why()).isEqualTo("23.1 psig behind it, 8.1 psig ahead: 15.0 psi hold it");
    assertThat(bench(10.55, 10).doing().word()).isEqualTo("about 1/2 open");
    assertThat(bench(90, 10).doing().why()).endsWith("choked in it");
  }

  @Test
  void tellsWhatCannotBe() {
    BenchFacts facts = facts();
    facts.si("full at", 0.1 * Bench.PSI, Dimension.PRESSURE_DIFFERENCE).not("bore").build();
    assertThat(facts.problems).containsExactlyInAnyOrder("full at", "bore");
  }
}
