package dev.offtake.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Stated;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RegulatorTest {
  private static BenchFacts facts() {
    return new BenchFacts(Regulator.KIND)
        .say("holds", new Facts.Reading("behind", false))
        .si("set to", 32 * Bench.PSI, Dimension.GAUGE_PRESSURE)
        .si("droop", 4 * Bench.PSI, Dimension.PRESSURE_DIFFERENCE)
        .say(
            "without muscle",
            new Facts.Below("shuts", Stated.of(8 * Bench.PSI, Dimension.GAUGE_PRESSURE)));
  }

  private static Part thermostat(Part regulator) {
    return new BenchFacts(Thermostat.KIND)
        .say("trims", regulator.name())
        .say("watches", new Facts.Reading("duct", true))
        .si("from", 500, Dimension.TEMPERATURE)
        .si("to", 520, Dimension.TEMPERATURE)
        .si("by at most", 10 * Bench.PSI, Dimension.PRESSURE_DIFFERENCE)
        .build();
  }

  private static Bench bench(double ahead, double behind) {
    return new Bench(facts().build()).at("ahead", ahead, 500).at("behind", behind, 480);
  }

  @ParameterizedTest
  @CsvSource({
    "60, 32, 0.5", "60, 33, 0.25", "60, 34.1, 0", "60, 29, 1",
    "10, 5, 0.5", "7, 5, 0", "23.25, 23.1, 0.5", "20, 23, 0"
  })
  void opensByPressureMuscleAndAgainstReverse(double ahead, double behind, double opening) {
    assertThat(bench(ahead, behind).observed(Regulator.OPENING)).isCloseTo(opening, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({
    "60, 32",
    "60, 33.5",
    "60, 36",
    "34, 33",
    "10, 5",
    "10, 9.9",
    "7, 5",
    "32.9, 32.75",
    "20, 31"
  })
  void partialsAgreeWithDifferences(double ahead, double behind) {
    assertThat(bench(ahead, behind).worstPartial()).isLessThan(1e-5);
  }

  @Test
  void isMovedByItsSenseLine() {
    Bench bench = bench(60, 40).sensed("behind", 32.5);
    assertThat(bench.observed(Regulator.DEMAND)).isCloseTo(0.375, within(1e-9));
    assertThat(bench.partial(bench.sensedVariable("behind"))).isNegative();
    bench.parameter(Regulator.SENSE_LOSS, 0.1);
    assertThat(bench.observed(Regulator.DEMAND)).isEqualTo(1);
    assertThat(bench.worstPartial()).isLessThan(1e-5);
  }

  @Test
  void thermostatTakesItsSetDown() {
    Part regulator = facts().build();
    Bench bench = new Bench(regulator, thermostat(regulator));
    bench.at("ahead", 60, 500).at("behind", 27.5, 480).at("duct", 0, 510);
    assertThat(bench.observed(Regulator.TRIM)).isCloseTo(5 * Bench.PSI, within(1e-6));
    assertThat(bench.observed(Regulator.OPENING)).isCloseTo(0.375, within(1e-9));
    assertThat(bench.partial(bench.temperatureVariable("duct"))).isNegative();
    assertThat(bench.worstPartial()).isLessThan(1e-5);
    assertThat(bench.doing().why()).contains("27.0 psig (32.0 psig less 5.0 psi");
    bench.at("duct", 0, 600);
    assertThat(bench.observed(Regulator.TRIM)).isCloseTo(10 * Bench.PSI, within(1e-6));
  }

  @Test
  void ownDownstreamMuscleHasTwoStates() {
    BenchFacts facts = facts().say("muscle from", "behind");
    Bench bench = new Bench(facts.build()).at("ahead", 60, 500);
    assertThat(bench.at("behind", 2, 480).observed(Regulator.OPENING)).isZero();
    assertThat(bench.at("behind", 30, 480).observed(Regulator.OPENING)).isEqualTo(1);
    assertThat(bench.at("behind", 10, 480).worstPartial()).isLessThan(1e-5);
  }

  @Test
  void springMayOpenItWithoutMuscle() {
    Stated none = Stated.of(8 * Bench.PSI, Dimension.GAUGE_PRESSURE);
    BenchFacts facts = facts().say("without muscle", new Facts.Below("opens", none));
    facts.si("set to", 3 * Bench.PSI, Dimension.GAUGE_PRESSURE);
    Bench bench = new Bench(facts.build()).at("ahead", 7, 500).at("behind", 6, 480);
    assertThat(bench.observed(Regulator.OPENING)).isEqualTo(1);
    bench.at("ahead", 10, 500);
    assertThat(bench.observed(Regulator.OPENING)).isCloseTo(0.5, within(1e-9));
    assertThat(bench.worstPartial()).isLessThan(1e-5);
  }

  @Test
  void absoluteSetDoesNotFollowTheAirOutside() {
    BenchFacts facts = facts().si("set to", 320000, Dimension.ABSOLUTE_PRESSURE);
    Bench bench = new Bench(facts.build()).at("ahead", 60, 500).at("behind", 20, 480);
    bench.sensed("behind", (320000 - Bench.AMBIENT) / Bench.PSI);
    bench.e.conditions = new Conditions(70000, 270, 70000, 270, 0.6, 0.3, false);
    assertThat(bench.observed(Regulator.DEMAND)).isCloseTo(0.5, within(1e-9));
  }

  @Test
  void gaugeSetWithAbsoluteReferenceIsTakenOnAStandardDay() {
    BenchFacts facts = facts().say("reference", "absolute");
    Parameter set = facts.build().parameters().get(Regulator.SET);
    assertThat(set.value()).isCloseTo(101325 + 32 * Bench.PSI, within(1e-6));
    assertThat(facts.assumed).contains("set to");
  }

  @Test
  void commandsAndWordsGoTogether() {
    BenchFacts facts = facts().say("shut when", "bleed switch is OFF").say("fed by", "dc bus");
    Bench bench = new Bench(facts.build()).at("ahead", 60, 500).at("behind", 23.1, 480);
    assertThat(bench.doing().regime()).isEqualTo("wide open");
    assertThat(bench.doing().why()).startsWith("behind 23.1 psig is under its set 32.0 psig");
    bench.control(Regulator.COMMAND, Command.SHUT);
    assertThat(bench.observed(Regulator.OPENING)).isZero();
    assertThat(bench.doing().regime()).isEqualTo("shut by command");
    bench.control(Regulator.COMMAND, Command.LIVE).at("behind", 40, 480);
    assertThat(bench.doing().regime()).isEqualTo("shut by pressure");
    assertThat(bench.at("behind", 32, 480).doing().regime()).isEqualTo("regulating");
    assertThat(bench.at("behind", 62, 480).doing().regime()).isEqualTo("held shut in reverse");
    bench.at("ahead", 6, 500).at("behind", 3, 480);
    assertThat(bench.doing().why()).contains("6.0 psig is under the 8.0 psig");
    bench.control(ValveBody.LOCK, ValveBody.LOCKED_OPEN);
    assertThat(bench.doing().regime()).isEqualTo("locked open");
    assertThat(bench.observed(Regulator.OPENING)).isEqualTo(1);
  }

  @Test
  void noPowerIsHeardBeforeAnySwitch() {
    BenchFacts facts = facts().say("shut when", "bleed switch is OFF").say("fed by", "dc bus");
    Control command = facts.say("without power", "opens").build().controls().get(1);
    assertThat(command.rules()).extracting(Control.Rule::value).containsExactly(2.0, 0.0, 1.0);
    assertThat(command.rules().get(0).why()).isEqualTo("no power on dc bus");
    Control stays = facts.say("without power", "stays").build().controls().get(1);
    assertThat(stays.rules()).extracting(Control.Rule::value).containsExactly(0.0, 1.0);
  }
}
