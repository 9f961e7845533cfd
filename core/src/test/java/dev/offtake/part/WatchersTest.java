package dev.offtake.part;

import static org.assertj.core.api.Assertions.assertThat;

import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Stated;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lights and leak loops. */
class WatchersTest {
  private static final Facts.Limit ALARM =
      new Facts.Limit(Stated.of(397, Dimension.TEMPERATURE), 5);

  private static KindFacts loop(boolean temperature) {
    return new KindFacts()
        .with("watches", new Facts.Reading("pylon zone", temperature))
        .with("alarm", ALARM);
  }

  @ParameterizedTest
  @CsvSource({
    "396.9, off, pylon zone 397 K is not over its alarm of 397 K",
    "420, on, pylon zone 420 K is over its alarm of 397 K"
  })
  void leakLoopLightsAboveItsAlarm(double t, String word, String why) {
    Bench bench = new Bench(LeakLoop.KIND.build(loop(true))).at("pylon zone", 0, t);
    assertThat(bench.doing()).isEqualTo(new Doing(word, word, why));
    assertThat(bench.part.is(word, bench.view())).isTrue();
    assertThat(bench.part.is("lit", bench.view())).isEqualTo(word.equals("on"));
    assertThat(((LeakLoop) bench.part).seconds()).isEqualTo(5);
  }

  @Test
  void leakLoopFollowsItsAlarmWhenThatDrifts() {
    Bench bench = new Bench(LeakLoop.KIND.build(loop(true))).at("pylon zone", 0, 380);
    assertThat(bench.part.is("on", bench.view())).isFalse();
    bench.parameter(0, 370);
    assertThat(bench.part.is("on", bench.view())).isTrue();
  }

  @Test
  void leakLoopFeelsNoPressure() {
    KindFacts facts = loop(false);
    LeakLoop.KIND.build(facts);
    assertThat(facts.problems).containsExactly("watches: a leak loop feels a temperature");
  }

  @Test
  void lightFollowsItsCondition() {
    KindFacts facts =
        new KindFacts().with("lit when", new BenchFacts.Words("overheat trip is tripped"));
    Bench bench = new Bench(Light.KIND.build(facts));
    assertThat(bench.doing()).isEqualTo(new Doing("off", "off", "not: overheat trip is tripped"));
    assertThat(bench.part.is("off", bench.view())).isTrue();
    bench.control(0, 1);
    assertThat(bench.doing()).isEqualTo(new Doing("on", "on", "overheat trip is tripped"));
    assertThat(bench.part.is("lit", bench.view())).isTrue();
    assertThat(bench.part.is("off", bench.view())).isFalse();
  }

  @Test
  void watchersPassNoAir() {
    for (Part part :
        new Part[] {LeakLoop.KIND.build(loop(true)), Light.KIND.build(new KindFacts())}) {
      assertThat(part.legs()).isEmpty();
      assertThat(part.role()).isEqualTo(Role.WATCH);
      assertThat(new Bench(part).element.branches()).isEmpty();
    }
  }
}
