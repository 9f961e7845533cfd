package dev.offtake.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.air.Air;
import dev.offtake.network.Demos;
import dev.offtake.part.Role;
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
    // A tight valve still passes 1e-5 of its area: what that brings is what the wall takes away.
    double brought = answer.flow("one") * Answers.LB_MIN;
    double heat = brought * (Air.h(answer.kelvin("duct")) - Air.h(answer.kelvin("middle")));
    assertThat(answer.kelvin("middle")).isBetween(Answers.AMBIENT_T, Answers.AMBIENT_T + 5);
    assertThat(heat).isCloseTo(0.5 * (answer.kelvin("middle") - Answers.AMBIENT_T), within(1e-6));
    assertThat(answer.kelvin("far")).isCloseTo(Answers.AMBIENT_T, within(0.5));
    assertThat(answer.psig("middle")).isBetween(-1e-6, answer.psig("duct"));
    assertThat(answer.flow("one")).isCloseTo(0, within(2e-3));
    assertThat(answer.flow("far user")).isCloseTo(0, within(2e-3));
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

  /**
   * A trickle of hot air through a wide valve into cold air: the valve is nearly still, and yet the
   * place before it is no warmer than the air that arrives there.
   */
  @Test
  void aTrickleIsNotWarmerThanItsSource() {
    Answers answer =
        Answers.ask(
            "parts:\n"
                + Benches.supply("hot", "source")
                + Benches.part("choke", "orifice", "path: source -> warm", "bore: 0.2 in")
                + Benches.valve("wide", "warm <-> cold", "").replace("2 in", "4 in")
                + Benches.supply("cool", "cold", 40).replace("400 degF", "60 degF")
                + Benches.user("pack", "cold", 50));
    assertThat(answer.solution.solved()).isTrue();
    int wide = answer.solution.network().part("wide");
    assertThat(answer.solution.still(wide, 0)).isTrue();
    double brought = answer.flow("choke") * Answers.LB_MIN;
    double heat = brought * (Air.h(answer.kelvin("source")) - Air.h(answer.kelvin("warm")));
    assertThat(answer.kelvin("warm")).isBetween(Answers.AMBIENT_T, answer.kelvin("source"));
    assertThat(heat).isCloseTo(0.5 * (answer.kelvin("warm") - Answers.AMBIENT_T), within(1e-4));
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
                + Benches.supply("supply", "duct").replace("table:", "on when: s is ON\n    table:")
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

  /** All valves of the demo taken out: still an answer, and no air in the ducts. */
  @Test
  void theDemoWithoutValvesIsAnAnswer() {
    Answers answer = withAllValves("removed and capped");
    assertThat(answer.flow("left pack")).isCloseTo(0, within(2e-2));
    assertThat(answer.kelvin("left duct")).isCloseTo(Answers.AMBIENT_T, within(1.0));
  }

  /** Locked shut they still leak, half a pound a minute at most at 30 psid each. */
  @Test
  void theDemoWithEveryValveShutIsAnAnswer() {
    Answers answer = withAllValves("locked shut");
    assertThat(answer.flow("left pack")).isBetween(0.0, 1.5);
    assertThat(answer.psig("left duct")).isBetween(0.0, 0.1);
  }

  private static Answers withAllValves(String lock) {
    BleedSystem demo = Demos.demo("twin");
    String[] sets =
        demo.parts().stream()
            .filter(part -> part.role() == Role.VALVE)
            .map(part -> part.name() + ": " + lock)
            .toArray(String[]::new);
    Answers answer = Answers.ask(demo, "take-off", sets);
    assertThat(answer.solution.solved()).isTrue();
    return answer;
  }
}
