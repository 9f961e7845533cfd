package dev.offtake.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.quantity.Dimension;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReliefValveTest {
  private static BenchFacts facts() {
    return new BenchFacts(ReliefValve.KIND)
        .say("path", new Facts.Path("duct", Leg.AMBIENT, false))
        .si("cracks at", 70 * Bench.PSI, Dimension.GAUGE_PRESSURE)
        .si("full at", 80 * Bench.PSI, Dimension.GAUGE_PRESSURE)
        .si("reseats at", 60 * Bench.PSI, Dimension.GAUGE_PRESSURE);
  }

  private static Bench at(double psig) {
    return new Bench(facts().build()).at("duct", psig, 480);
  }

  @Test
  void remembersThatItPopped() {
    Bench bench = at(65);
    assertThat(bench.element.settle(bench.e)).isFalse();
    assertThat(bench.observed(0)).isZero();
    bench.at("duct", 75, 480);
    assertThat(bench.element.settle(bench.e)).isTrue();
    assertThat(bench.observed(0)).isCloseTo(0.75, within(1e-9));
    bench.at("duct", 65, 480);
    assertThat(bench.element.settle(bench.e)).isFalse();
    assertThat(bench.observed(0)).isCloseTo(0.25, within(1e-9));
    assertThat(bench.doing().regime()).isEqualTo("not reseated");
    bench.at("duct", 59, 480);
    assertThat(bench.element.settle(bench.e)).isTrue();
    assertThat(bench.observed(0)).isZero();
  }

  @ParameterizedTest
  @CsvSource({"50, 0", "72, 0", "72, 1", "65, 1", "90, 0"})
  void partialsAgreeWithDifferences(double psig, double popped) {
    assertThat(at(psig).control(1, popped).worstPartial()).isLessThan(1e-5);
  }

  @Test
  void mayCountFromThePointBehindIt() {
    BenchFacts facts = facts().say("counts from", "behind");
    facts.say("path", new Facts.Path("duct", "plenum", false));
    Bench bench = new Bench(facts.build()).at("duct", 95, 480).at("plenum", 20, 400);
    assertThat(bench.observed(0)).isCloseTo(0.5, within(1e-9));
    assertThat(bench.worstPartial()).isLessThan(1e-5);
    assertThat(bench.doing().why()).startsWith("duct 75.0 psi is above the 70.0 psi");
  }

  @Test
  void tellsItsLimits() {
    Bench bench = at(50);
    assertThat(bench.doing().why()).isEqualTo("duct 50.0 psig is under the 70.0 psig that open it");
    assertThat(bench.part.is("shut", bench.view())).isTrue();
    BenchFacts facts = facts();
    facts.si("reseats at", 75 * Bench.PSI, Dimension.GAUGE_PRESSURE).build();
    assertThat(facts.problems).containsExactly("reseats at");
  }
}
