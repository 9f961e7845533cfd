package dev.offtake.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Who gives and who takes, without an engine: starved users, two supplies, two regulators. */
class UsersAndSuppliesTest {
  @Test
  void aStarvedUserIsAnOrdinaryAnswer() {
    Answers answer =
        Answers.ask(
            "parts:\n"
                + Benches.supply("supply", "duct", 40)
                + Benches.part("choke", "orifice", "path: duct -> cabin", "bore: 0.4 in")
                + Benches.user("pack", "cabin", 90));
    assertThat(answer.solution.solved()).isTrue();
    assertThat(answer.flow("pack")).isBetween(0.5, 45.0);
    assertThat(answer.flow("pack")).isCloseTo(answer.flow("supply"), within(1e-6));
    assertThat(answer.solution.is("pack", "starved")).isTrue();
    assertThat(answer.doing("pack").word()).startsWith("starved, takes");
    assertThat(answer.doing("pack").why())
        .contains("is under the", "short of")
        .doesNotContain("wide open");
  }

  /** The supply's table: 60 psig less a tenth of a psi for each lb/min, less its check valve. */
  @Test
  void suppliesAloneFeedAUser() {
    Answers answer =
        Answers.ask(
            "parts:\n" + Benches.supply("supply", "duct") + Benches.user("pack", "duct", 50));
    assertThat(answer.solution.solved()).isTrue();
    assertThat(answer.flow("pack")).isCloseTo(50, within(0.6));
    assertThat(answer.psig("duct")).isCloseTo(60 - 0.3 - 0.1 * answer.flow("pack"), within(1e-6));
  }

  @Test
  void theStrongerOfTwoSuppliesDeadheadsTheOther() {
    Answers answer =
        Answers.ask(
            "parts:\n"
                + Benches.supply("strong", "duct", 60)
                + Benches.supply("weak", "duct", 40)
                + Benches.user("pack", "duct", 50));
    assertThat(answer.solution.solved()).isTrue();
    assertThat(answer.flow("strong")).isCloseTo(answer.flow("pack"), within(1e-3));
    assertThat(answer.flow("weak")).isCloseTo(0, within(1e-3));
    assertThat(answer.doing("weak").regime()).isEqualTo("deadheaded");
  }

  /** Equal supplies share evenly. */
  @Test
  void equalSuppliesShare() {
    Answers answer =
        Answers.ask(
            "parts:\n"
                + Benches.supply("one", "duct", 50)
                + Benches.supply("two", "duct", 50)
                + Benches.user("pack", "duct", 80));
    assertThat(answer.solution.solved()).isTrue();
    assertThat(answer.flow("one")).isCloseTo(answer.flow("two"), within(1e-6));
  }

  @Test
  void theHigherOfTwoRegulatorsFeedsAllAndTheOtherShuts() {
    Answers answer =
        Answers.ask(
            "parts:\n"
                + Benches.supply("one", "high side", 60)
                + Benches.supply("two", "low side", 60)
                + Benches.regulator("high regulator", "high side -> manifold", "manifold", 40)
                + Benches.regulator("low regulator", "low side -> manifold", "manifold", 30)
                + Benches.user("pack", "manifold", 50));
    assertThat(answer.solution.solved()).isTrue();
    assertThat(answer.psig("manifold")).isBetween(37.5, 42.0);
    assertThat(answer.flow("high regulator")).isCloseTo(answer.flow("pack"), within(0.5));
    assertThat(answer.flow("low regulator")).isBetween(0.0, 0.5);
    assertThat(answer.doing("low regulator").regime()).isEqualTo("shut by pressure");
    assertThat(answer.doing("low regulator").why()).contains("is above its set 30");
    assertThat(answer.doing("high regulator").regime()).isEqualTo("regulating");
  }

  /** Where the higher cannot give enough the lower helps out. */
  @Test
  void theLowerRegulatorHelpsWhenTheHigherRunsOut() {
    Answers answer =
        Answers.ask(
            "parts:\n"
                + Benches.supply("one", "high side", 45)
                + Benches.supply("two", "low side", 60)
                + Benches.regulator("high regulator", "high side -> manifold", "manifold", 44)
                + Benches.regulator("low regulator", "low side -> manifold", "manifold", 36)
                + Benches.user("pack", "manifold", 150));
    assertThat(answer.solution.solved()).isTrue();
    assertThat(answer.psig("manifold")).isBetween(33.0, 38.5);
    assertThat(answer.doing("high regulator").regime()).isEqualTo("wide open");
    assertThat(answer.flow("low regulator")).isGreaterThan(10);
    assertThat(answer.flow("low regulator") + answer.flow("high regulator"))
        .isCloseTo(answer.flow("pack"), within(1e-5));
  }
}
