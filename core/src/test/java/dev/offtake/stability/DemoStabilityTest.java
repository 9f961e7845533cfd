package dev.offtake.stability;

import static org.assertj.core.api.Assertions.assertThat;

import dev.offtake.explain.Question;
import dev.offtake.network.Demos;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.solve.Settler;
import dev.offtake.solve.Solution;
import dev.offtake.stability.Stability.Verdict;
import dev.offtake.system.BleedSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The demos' answers stay where they are; where that hangs on assumed lags, it is said. */
class DemoStabilityTest {
  /** The twin throttles most at take-off: there the gain of its regulators is largest. */
  private static final String THROTTLED = "twin, take-off, usual";

  @ParameterizedTest
  @ValueSource(strings = {"twin", "rotor"})
  void eachPowerAndLineUpIsJudged(String name) throws QuantityProblem {
    BleedSystem system = Demos.demo(name);
    for (String power : system.settings().keySet()) {
      for (String lineUp : system.lineUps().keySet()) {
        Question question = Question.of(system, power, "", lineUp, List.of());
        Stability stability = Stability.of(new Settler(system.network()).solve(question.setup()));
        String which = String.join(", ", name, power, lineUp);
        Verdict expected = which.equals(THROTTLED) ? Verdict.MAY_HUNT : Verdict.STEADY;
        assertThat(stability.verdict()).as(which + stability.says()).isEqualTo(expected);
        assertThat(stability.says()).hasSize(1);
      }
    }
  }

  /** A steady solver finds states that stay: none of them runs away, and each can be judged. */
  @Test
  void randomLineUpsDoNotRunAway() throws QuantityProblem {
    Random random = new Random(20240501);
    BleedSystem system = Demos.demo("twin");
    Settler settler = new Settler(system.network());
    List<String> wrong = new ArrayList<>();
    for (int draw = 0; draw < 100; draw++) {
      String core = String.format(Locale.ROOT, "%.2f %%", 55 + 50 * random.nextDouble());
      List<String> sets =
          system.switches().entrySet().stream()
              .map(s -> s.getKey() + ": " + s.getValue().get(random.nextInt(s.getValue().size())))
              .toList();
      Solution solution = settler.solve(Question.of(system, core, "", "", sets).setup());
      Verdict verdict = Stability.of(solution).verdict();
      if (solution.solved() && verdict.compareTo(Verdict.LEAVES) >= 0) {
        wrong.add(core + sets + Stability.of(solution).says());
      }
    }
    assertThat(wrong).isEmpty();
  }
}
