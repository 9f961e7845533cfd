package dev.offtake.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.quantity.Dimension;
import org.junit.jupiter.api.Test;

class ShutoffValveTest {
  private static BenchFacts facts() {
    return new BenchFacts(ShutoffValve.KIND);
  }

  @Test
  void opensOnlyWhenToldAndElseIsOpen() {
    Part told = facts().say("open when", "isolation is OPEN").build();
    assertThat(told.controls().get(1).initial()).isZero();
    assertThat(told.controls().get(1).rules())
        .extracting(Control.Rule::value)
        .containsExactly(1.0, 0.0);
    assertThat(facts().build().controls().get(1).initial()).isEqualTo(1);
  }

  @Test
  void passesEitherWayAndLeaksWhenShut() {
    Bench bench = new Bench(facts().build()).at("ahead", 30, 450).at("behind", 20, 420);
    double forward = bench.run().mdot;
    assertThat(forward).isPositive();
    assertThat(bench.worstPartial()).isLessThan(1e-5);
    bench.at("ahead", 20, 420).at("behind", 30, 450);
    assertThat(bench.run().mdot).isCloseTo(-forward, within(1e-12));
    bench.control(1, 0);
    assertThat(bench.run().mdot).isBetween(-1e-3, -1e-5);
    assertThat(bench.worstPartial()).isLessThan(1e-5);
  }

  @Test
  void capIsTighterThanItsLeakButNotTight() {
    Bench bench = new Bench(facts().build()).at("ahead", 30, 450).at("behind", 0, 420);
    double shut = bench.control(1, 0).run().mdot;
    double capped = bench.control(ValveBody.LOCK, ValveBody.CAPPED).run().mdot;
    assertThat(capped).isPositive().isLessThan(shut);
    assertThat(bench.doing().word()).isEqualTo("capped");
  }

  @Test
  void capacityStandsForBoreAndCoefficient() {
    // Water of 1000 kg/m³ at 1 bar: Kv m³/h = 3600·A·√(2·1e5/1000); own case by hand.
    double area =
        facts()
            .not("bore")
            .si("capacity", 100, Dimension.VALVE_CAPACITY)
            .build()
            .parameters()
            .get(ValveBody.AREA)
            .value();
    assertThat(3600 * area * Math.sqrt(200)).isCloseTo(100, within(1e-9));
  }

  @Test
  void nozzleLawAndValveLawDifferWhenChoked() {
    Bench valve = new Bench(facts().build()).at("ahead", 60, 450);
    Bench nozzle = new Bench(facts().say("law", "nozzle").build()).at("ahead", 60, 450);
    assertThat(valve.run().choked).isTrue();
    // x_T 0.7: an IEC valve of the same area passes up to 17 % more choked air than a nozzle;
    // recomputed.
    assertThat(valve.run().mdot / nozzle.run().mdot).isBetween(1.1, 1.2);
  }

  @Test
  void refusesAnImpossiblePressureRatioFactor() {
    BenchFacts facts = facts().si("x_T", 40, Dimension.NUMBER);
    facts.build();
    assertThat(facts.problems).containsExactly("x_T");
  }

  @Test
  void saysWhoCommandsIt() {
    Bench bench = new Bench(facts().say("shut when", "bleed switch is OFF").build());
    assertThat(bench.doing().word()).isEqualTo("open");
    bench.control(1, 0);
    assertThat(bench.doing().why()).isEqualTo("bleed switch is OFF");
  }
}
