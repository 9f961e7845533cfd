package dev.offtake.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** The finite state around the continuous one: cycles, reliefs, trips. */
class MemoryAndLogicTest {
  private static String relief(String cracks, String full, String reseats) {
    return Benches.part(
        "relief",
        "relief valve",
        "path: duct -> ambient",
        "bore: 2 in",
        "cracks at: " + cracks + " psig",
        "full at: " + full + " psig",
        "reseats at: " + reseats + " psig");
  }

  private static String trip(String resets) {
    return Benches.part(
        "guard", "trip", "watches: duct pressure", "above: 40 psig", "resets: " + resets);
  }

  private static final String FED =
      Benches.supply("supply", "inlet")
          + Benches.valve("valve", "inlet -> duct", "shut when: guard is tripped")
          + Benches.user("pack", "duct", 20);

  /** A valve that shuts on the pressure that it makes itself. */
  @Test
  void aCycleNamesWhatAlternates() {
    Answers answer =
        Answers.ask(
            "parts:\n"
                + Benches.supply("supply", "inlet")
                + Benches.valve(
                    "flip valve", "inlet -> duct", "shut when: duct pressure above 20 psig")
                + Benches.valve(
                    "calm valve", "inlet -> side", "shut when: side pressure above 90 psig")
                + Benches.user("other", "side", 10)
                + Benches.user("pack", "duct", 20));
    assertThat(answer.solution.solved()).isFalse();
    assertThat(answer.solution.outcome().cycle()).containsExactly("flip valve");
  }

  @Test
  void aReliefUnderItsCrackingPressureRemembersNothing() {
    Answers answer =
        Answers.ask("parts:\n" + Benches.supply("supply", "duct", 65) + relief("70", "80", "60"));
    assertThat(answer.solution.solved()).isTrue();
    assertThat(answer.solution.outcome().memory()).isEmpty();
    assertThat(answer.doing("relief").regime()).isEqualTo("shut");
    assertThat(answer.psig("duct")).isGreaterThan(60);
  }

  /** 75 psig pop it; popped it opens from its reseating pressure on and holds less. */
  @Test
  void aReliefThatHasPoppedStaysOpenUnderItsCrackingPressure() {
    Answers answer =
        Answers.ask("parts:\n" + Benches.supply("supply", "duct", 75) + relief("70", "80", "40"));
    assertThat(answer.solution.solved()).isTrue();
    assertThat(answer.solution.outcome().memory()).containsExactly("relief");
    assertThat(answer.psig("duct")).isBetween(40.0, 70.0);
    assertThat(answer.doing("relief").regime()).isEqualTo("not reseated");
    assertThat(answer.flow("relief")).isCloseTo(answer.flow("supply"), within(1e-6));
    Answers before = Answers.of(answer.solution.outcome().before().orElseThrow());
    assertThat(before.psig("duct")).isGreaterThan(70);
    assertThat(before.solution.outcome().memory()).isEmpty();
    assertThat(before.flow("relief")).isLessThan(answer.flow("relief"));
  }

  @Test
  void aTripIsTwoAnswers() {
    Answers after = Answers.ask("parts:\n" + FED + trip("by hand"));
    assertThat(after.solution.solved()).isTrue();
    assertThat(after.solution.outcome().memory()).containsExactly("guard");
    assertThat(after.solution.is("guard", "tripped")).isTrue();
    assertThat(after.doing("valve").regime()).isEqualTo("shut by command");
    assertThat(after.flow("pack")).isLessThan(1);
    Answers before = Answers.of(after.solution.outcome().before().orElseThrow());
    assertThat(before.solution.solved()).isTrue();
    assertThat(before.solution.is("guard", "tripped")).isFalse();
    assertThat(before.psig("duct")).isGreaterThan(40);
    assertThat(before.flow("pack")).isCloseTo(20, within(0.5));
  }

  /** One that resets by itself as soon as the valve shuts never comes to rest. */
  @Test
  void aTripThatResetsItselfIsACycleThatIsNamed() {
    Answers answer = Answers.ask("parts:\n" + FED + trip("by itself below 30 psig"));
    assertThat(answer.solution.solved()).isFalse();
    assertThat(answer.solution.outcome().cycle()).contains("guard").contains("valve");
  }

  /** Each answer begins afresh: a trip is not carried over into the next question. */
  @Test
  void nothingIsRememberedFromOneQuestionToTheNext() {
    var system = dev.offtake.network.Demos.demo("twin");
    Settler settler = new Settler(system.network());
    Setup hot = Answers.setup(system, "take-off", "left cooling air valve: locked shut");
    Setup plain = Answers.setup(system, "take-off");
    Solution first = settler.solve(plain);
    assertThat(settler.solve(hot).outcome().memory()).isNotEmpty();
    Solution again = settler.solve(plain);
    assertThat(again.outcome().memory()).isEmpty();
    for (int i = 0; i < system.network().points().size(); i++) {
      double p = first.pressure(i);
      assertThat(again.pressure(i)).isCloseTo(p, within(1e-7 * p));
    }
  }
}
