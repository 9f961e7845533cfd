package dev.offtake.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.network.Demos;
import dev.offtake.system.BleedSystem;
import org.junit.jupiter.api.Test;

/** Where no air moves: shut valves on both sides, closed ends, a system that is off. */
class StillPlacesTest {
  private static final String TIGHT = "leak: 0 lb/min at 30 psid";

  @Test
  void aPointBetweenShutValvesCoolsToItsSurroundings() {
    Answers answer =
        Answers.ask(
            "switches: {s: [OFF, ON]}\nparts:\n"
                + Benches.supply("supply", "duct")
                + Benches.user("user", "duct", 50)
                + Benches.valve("one", "duct -> middle", "open when: s is ON\n    " + TIGHT)
                + Benches.valve("two", "middle -> far", "open when: s is ON\n    " + TIGHT)
                + Benches.user("far user", "far", 30));
    assertThat(answer.solution.solved()).isTrue();
    assertThat(answer.kelvin("duct")).isGreaterThan(450);
    assertThat(answer.kelvin("middle")).isCloseTo(Answers.AMBIENT_T, within(0.5));
    assertThat(answer.kelvin("far")).isCloseTo(Answers.AMBIENT_T, within(0.5));
    assertThat(answer.psig("middle")).isBetween(-1e-6, answer.psig("duct"));
    assertThat(answer.flow("one")).isCloseTo(0, within(1e-3));
    assertThat(answer.flow("far user")).isCloseTo(0, within(1e-3));
  }

  /** One side open: the pressure of the main, the temperature of the surroundings. */
  @Test
  void aDeadLegHoldsThePressureOfTheMainAndItsOwnTemperature() {
    Answers answer =
        Answers.ask(
            "switches: {s: [OFF, ON]}\nparts:\n"
                + Benches.supply("supply", "main")
                + Benches.user("user", "main", 50)
                + Benches.duct("leg", "main -> end")
                + Benches.valve("shut", "end -> ambient", "open when: s is ON\n    " + TIGHT));
    assertThat(answer.solution.solved()).isTrue();
    assertThat(answer.psig("end")).isCloseTo(answer.psig("main"), within(0.01));
    assertThat(answer.kelvin("main")).isGreaterThan(450);
    assertThat(answer.kelvin("end")).isCloseTo(Answers.AMBIENT_T, within(1.0));
  }

  @Test
  void aClosedEndIsFullOfPressure() {
    Answers answer =
        Answers.ask(
            "parts:\n"
                + Benches.supply("supply", "duct")
                + Benches.duct("line", "duct -> tank")
                + Benches.part(
                    "tank hold", "dead-ended user", "takes from: tank", "needs: 8 psig"));
    assertThat(answer.solution.solved()).isTrue();
    assertThat(answer.psig("tank")).isCloseTo(60, within(0.5));
    assertThat(answer.kelvin("tank")).isCloseTo(Answers.AMBIENT_T, within(1.0));
    assertThat(answer.doing("supply").regime()).isEqualTo("deadheaded");
  }

  /** Everything off or shut: outside pressure and temperature all over, and it is an answer. */
  @Test
  void nothingMovesInASystemThatIsOff() {
    BleedSystem system =
        Demos.text(
            "switches: {s: [OFF, ON]}\nparts:\n"
                + Benches.supply("supply", "duct")
                    .replace("table:", "on when: s is ON\n        table:")
                + Benches.duct("line", "duct -> mid")
                + Benches.valve("one", "mid -> far", "open when: s is ON")
                + Benches.duct("cross", "duct -> far")
                + Benches.part(
                    "user", "orifice user", "takes from: far", "bore: 1 in", "open when: s is ON"));
    Answers off = Answers.ask(system, "80 %");
    assertThat(off.solution.solved()).isTrue();
    for (String point : new String[] {"duct", "mid", "far"}) {
      assertThat(off.psig(point)).isCloseTo(0, within(1e-6));
      assertThat(off.kelvin(point)).isCloseTo(Answers.AMBIENT_T, within(1e-3));
    }
    assertThat(off.flow("user")).isCloseTo(0, within(1e-6));
    Answers on = Answers.ask(system, "80 %", "s: ON");
    assertThat(on.solution.solved()).isTrue();
    assertThat(on.flow("user")).isGreaterThan(10);
  }

  /** All valves of the demo locked shut, or taken out: still an answer. */
  @Test
  void theDemoWithEveryValveShutIsAnAnswer() {
    BleedSystem demo = Demos.demo("twin");
    for (String lock : new String[] {"locked shut", "removed and capped"}) {
      String[] sets =
          demo.parts().stream()
              .filter(part -> part.role() == dev.offtake.part.Role.VALVE)
              .map(part -> part.name() + ": " + lock)
              .toArray(String[]::new);
      Answers answer = Answers.ask(demo, "take-off", sets);
      assertThat(answer.solution.solved()).as(lock).isTrue();
      assertThat(answer.flow("left pack")).isCloseTo(0, within(0.3));
      assertThat(answer.kelvin("left duct")).isCloseTo(Answers.AMBIENT_T, within(6.0));
    }
  }
}
