package dev.offtake.part;

import static org.assertj.core.api.Assertions.assertThat;

import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Stated;
import org.junit.jupiter.api.Test;

class TripTest {
  private static BenchFacts overheat(boolean byHand) {
    return new BenchFacts(Trip.KIND)
        .not("bore")
        .say("watches", new Facts.Reading("duct", true))
        .say("above", new Facts.Limit(Stated.of(528, Dimension.TEMPERATURE), 3))
        .say("resets", new Facts.Reset(byHand, Stated.of(500, Dimension.TEMPERATURE)));
  }

  private static boolean settle(Bench bench, double psig, double t) {
    bench.at("duct", psig, t);
    return bench.element.settle(bench.e);
  }

  private static boolean tripped(Bench bench) {
    assertThat(bench.part.is("normal", bench.view()))
        .isNotEqualTo(bench.part.is("tripped", bench.view()));
    return bench.part.is("tripped", bench.view());
  }

  @Test
  void latchesUntilAHandResetsIt() {
    Bench bench = new Bench(overheat(true).build());
    assertThat(settle(bench, 40, 520)).isFalse();
    assertThat(tripped(bench)).isFalse();
    assertThat(settle(bench, 40, 530)).isTrue();
    assertThat(settle(bench, 40, 300)).isFalse();
    assertThat(tripped(bench)).isTrue();
    assertThat(bench.doing().why()).isEqualTo("duct is at 300 K; only a hand resets it at 500 K");
    assertThat(((Trip) bench.part).delay()).isEqualTo(3);
  }

  @Test
  void resetsByItselfOnlyWhenTheValueIsRegained() {
    Bench bench = new Bench(overheat(false).build());
    settle(bench, 40, 530);
    assertThat(settle(bench, 40, 510)).isFalse();
    assertThat(tripped(bench)).isTrue();
    assertThat(settle(bench, 40, 499)).isTrue();
    assertThat(tripped(bench)).isFalse();
  }

  @Test
  void watchesStaticPressureBelowALimitOnAnyDay() {
    BenchFacts facts =
        new BenchFacts(Trip.KIND)
            .say("watches", new Facts.Reading("duct", false))
            .say("below", limit(10))
            .say(
                "resets",
                new Facts.Reset(false, Stated.of(15 * Bench.PSI, Dimension.GAUGE_PRESSURE)));
    Bench bench = new Bench(facts.build());
    assertThat(settle(bench, 12, 400)).isFalse();
    bench.sensed("duct", 9);
    assertThat(bench.element.settle(bench.e)).isTrue();
    bench.sensed("duct", 12);
    assertThat(bench.element.settle(bench.e)).isFalse();
    bench.e.conditions = new Conditions(60000, 250, 60000, 250, 0.6, 0.3, false);
    assertThat(bench.element.settle(bench.e)).isTrue();
    assertThat(tripped(bench)).isFalse();
  }

  @Test
  void refusesALimitOfTheWrongSort() {
    BenchFacts facts = overheat(true).say("below", limit(10));
    facts.build();
    assertThat(facts.problems).containsExactly("below");
    BenchFacts none = new BenchFacts(Trip.KIND).say("watches", new Facts.Reading("duct", true));
    none.build();
    assertThat(none.problems).containsExactly("above");
  }

  private static Facts.Limit limit(double psig) {
    return new Facts.Limit(Stated.of(psig * Bench.PSI, Dimension.GAUGE_PRESSURE), 0);
  }
}
