package dev.offtake.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Stated;
import org.junit.jupiter.api.Test;

/** What broken lines, vents, actuators and sensors do and say, in closed form on the bench. */
class BrokenValveWordsTest {
  private static BenchFacts facts() {
    return new BenchFacts(Regulator.KIND)
        .say("holds", new Facts.Reading("behind", false))
        .si("set to", 30 * Bench.PSI, Dimension.GAUGE_PRESSURE)
        .si("droop", 4 * Bench.PSI, Dimension.PRESSURE_DIFFERENCE);
  }

  private static BenchFacts muscled(String does) {
    Stated none = Stated.of(8 * Bench.PSI, Dimension.GAUGE_PRESSURE);
    return facts().say("without muscle", new Facts.Below(does, none));
  }

  /** Breaks the bench's part to the usual extent, or to one given in SI. */
  private static Bench broken(Part part, String name, double... extent) {
    Mode mode = part.modes().stream().filter(m -> m.name().equals(name)).findFirst().orElseThrow();
    Bench bench = new Bench(part);
    for (Mode.Shift shift : mode.shifts()) {
      for (int i = 0; i < part.parameters().size(); i++) {
        if (part.parameters().get(i).name().equals(shift.parameter())) {
          double to = extent.length > 0 ? extent[0] : mode.usualExtent();
          bench.parameter(i, shift.becomes().of(part.parameters().get(i).value(), to));
        }
      }
    }
    return bench;
  }

  private static double demand(Bench bench) {
    assertThat(bench.worstPartial()).isLessThan(1e-5);
    return bench.observed(Regulator.DEMAND);
  }

  /** Feels (1 − 0.2) · 40 = 32 psig: ½ + (30 − 32)/4 = 0. */
  @Test
  void aLeakingSenseLineFeelsLess() {
    Bench bench = broken(facts().build(), "sense line leaking", 0.2);
    bench.at("ahead", 60, 500).at("behind", 38.75, 480);
    assertThat(demand(bench)).isCloseTo(0.25, within(1e-9));
    assertThat(bench.doing().why()).contains("(it feels 31.0 psig, 20 % is lost on the way)");
  }

  @Test
  void aBlockedSenseLineFeelsWhatItTrapped() {
    Bench bench = broken(facts().build(), "sense line blocked", 31 * Bench.PSI);
    bench.at("ahead", 60, 500).at("behind", 12, 480);
    assertThat(demand(bench)).isCloseTo(0.25, within(1e-9));
    assertThat(bench.doing().why())
        .contains("its sense line is blocked, it feels the trapped 31.0 psig");
    assertThat(demand(bench.at("behind", 50, 480))).isCloseTo(0.25, within(1e-9));
  }

  @Test
  void iceFeelsNothingAndWaterFeelsMore() {
    Bench ice = broken(facts().build(), "ice in the sense line");
    assertThat(demand(ice.at("ahead", 60, 500).at("behind", 50, 480))).isEqualTo(1);
    Bench water = broken(facts().build(), "water in the sense line", 0.703);
    // 0.703 m of water is 1.0 psi (1000 kg/m³, 9.80665 m/s²).
    water.at("ahead", 60, 500).at("behind", 30, 480);
    assertThat(demand(water)).isCloseTo(0.25, within(1e-3));
    assertThat(water.doing().why()).contains("it feels 1.0 psi more, of water in the line");
  }

  /** At 70 kPa outside, 101.325 kPa trapped put the set 4.54 psi up. */
  @Test
  void aBlockedVentCountsFromTheGround() {
    Bench bench = broken(facts().build(), "vent blocked", 101325);
    bench.e.conditions = new Conditions(70000, 270, 70000, 270, 0.6, 0.3, false);
    // The bench counts psig from 101.325 kPa, so that 30 of them are the set with what is trapped.
    bench.at("ahead", 60, 500).at("behind", 30, 480);
    assertThat(demand(bench)).isCloseTo(0.5, within(1e-9));
    assertThat(bench.doing().why()).contains("34.5 psig (its vent is shut with 14.7 psia in it)");
  }

  @Test
  void aPuncturedCapsuleCountsFromTheAirOutside() {
    BenchFacts facts = facts().si("set to", 300000, Dimension.ABSOLUTE_PRESSURE);
    Bench bench = broken(facts.build(), "capsule punctured");
    bench.at("ahead", 60, 500).at("behind", 300000 / Bench.PSI, 480);
    assertThat(demand(bench)).isCloseTo(0.5, within(1e-9));
  }

  @Test
  void muscleIsLostLeaksOrIsOnlyPartlyUsed() {
    Bench lost = broken(muscled("shuts").build(), "muscle lost");
    lost.at("ahead", 60, 500).at("behind", 20, 480);
    assertThat(lost.observed(Regulator.OPENING)).isZero();
    assertThat(lost.doing().why()).isEqualTo("no muscle: none reaches its actuator");
    Bench spring = broken(muscled("opens").build(), "muscle lost");
    spring.at("ahead", 60, 500).at("behind", 50, 480);
    assertThat(spring.observed(Regulator.OPENING)).isEqualTo(1);
    Bench leaking = broken(muscled("shuts").build(), "servo line leaking", 0.5);
    // 20 psig arrive as 10: half way from 8 to 12.
    leaking.at("ahead", 20, 500).at("behind", 5, 480);
    assertThat(leaking.observed(Regulator.OPENING)).isCloseTo(0.5, within(1e-9));
    assertThat(leaking.worstPartial()).isLessThan(1e-5);
    assertThat(leaking.doing().why()).endsWith("and its servo line loses some");
    Bench leaky = broken(facts().build(), "actuator diaphragm leaking", 0.4);
    leaky.at("ahead", 60, 500).at("behind", 20, 480);
    assertThat(leaky.observed(Regulator.OPENING)).isCloseTo(0.6, within(1e-9));
    assertThat(leaky.doing().why()).endsWith("it makes use of only 60 % of it");
  }

  @Test
  void aValveThatItsSpringOpensDoesNotShutOnCommandWithoutMuscle() {
    BenchFacts facts = muscled("opens").say("shut when", "bleed switch is OFF");
    Bench bench = new Bench(facts.build()).at("ahead", 6, 500).at("behind", 2, 480);
    bench.control(Regulator.COMMAND, Command.SHUT);
    assertThat(bench.observed(Regulator.OPENING)).isEqualTo(1);
    assertThat(bench.doing().regime()).isEqualTo("opened by its spring");
  }

  @Test
  void aSensorFeelsWrongOrNothing() {
    BenchFacts facts =
        new BenchFacts(TemperatureControlValve.KIND)
            .say("watches", new Facts.Reading("behind", true))
            .si("from", 450, Dimension.TEMPERATURE)
            .si("to", 500, Dimension.TEMPERATURE);
    Bench high = broken(facts.build(), "temperature sensor drifted high", 20);
    high.at("ahead", 5, 300).at("behind", 0, 455);
    assertThat(high.observed(0)).isCloseTo(0.5, within(1e-9));
    assertThat(high.worstPartial()).isLessThan(1e-5);
    assertThat(high.doing().why())
        .isEqualTo("behind 455 K, but its sensor feels 475 K: that is within its 450 to 500 K");
    Bench cold = broken(facts.build(), "temperature sensor failed cold");
    assertThat(cold.at("ahead", 5, 300).at("behind", 0, 600).observed(0)).isZero();
    assertThat(cold.doing().why()).contains("has failed cold");
    Bench hot = broken(facts.build(), "temperature sensor failed hot");
    assertThat(hot.at("ahead", 5, 300).at("behind", 0, 300).observed(0)).isEqualTo(1);
  }

  /** Half of the bore stands open, both ways, and the other half still works. */
  @Test
  void halfAFlapperLeavesHalfTheBoreOpenBothWays() {
    Part valve = new BenchFacts(CheckValve.KIND).build();
    Bench half = broken(valve, "half the flapper lost");
    Bench missing = broken(valve, "flapper missing");
    double back = half.at("ahead", 10, 400).at("behind", 20, 400).run().mdot;
    double whole = missing.at("ahead", 10, 400).at("behind", 20, 400).run().mdot;
    assertThat(back / whole).isCloseTo(0.5, within(1e-9));
    double forward = half.at("ahead", 20, 400).at("behind", 10, 400).run().mdot;
    assertThat(forward).isCloseTo(-whole, within(1e-9));
  }
}
