package dev.offtake.explain;

import static org.assertj.core.api.Assertions.assertThat;

import dev.offtake.part.Kinds;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.Style;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.Reading;
import dev.offtake.system.SystemReader;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Limits of a file in what is told of a state. */
class OperatingLimitTest {
  private static final String FILE =
      """
      offtake: 1
      power settings: {on the ground: {core: 62 %}}
      switches: {start switch: [OFF, ON]}
      parts:
        cart:
          kind: supply
          to: duct
          temperature: 400 degF
          table: {columns: [psig, lb/min], rows: [[50, 0], [45, 80], [20, 200]]}
        pack: {kind: flow user, takes from: duct, takes: 40 lb/min, needs: 12 psig}
      limits:
        duct limit: {watches: duct temperature, at most: 390 degF}
        least limit: {watches: duct pressure, at least: 30 psig}
        starter limit: {watches: duct pressure, at most: 45 psig, while: start switch is ON}
      """;

  private static StateAnswer answer(String text, String... set) throws QuantityProblem {
    Reading reading = SystemReader.readText("cart.yaml", text, Kinds.all());
    assertThat(reading.problems()).isEmpty();
    BleedSystem system = reading.system().orElseThrow();
    return StateInquiry.answer(
        Question.of(system, "on the ground", "", "", List.of(set)), Style.SHOP);
  }

  private static List<String> room(StateAnswer answer) {
    return answer.room().stream().map(r -> r.name() + ": " + r.says()).toList();
  }

  @Test
  void oneThatIsPassedIsSaidFirst() throws QuantityProblem {
    StateAnswer answer = answer(FILE);
    assertThat(answer.headline())
        .contains(
            "The duct limit IS PASSED: duct temperature 399 °F, 9 °F ABOVE the 390 °F allowed.")
        .noneMatch(says -> says.contains("least limit"));
  }

  @Test
  void theRoomOfEachThatCountsIsTold() throws QuantityProblem {
    assertThat(room(answer(FILE)))
        .contains(
            "least limit: duct pressure 47.2 psig, 17.2 psi above the 30.0 psig that it must have")
        .noneMatch(says -> says.startsWith("starter limit"));
  }

  @Test
  void oneThatCountsOnlyAtTimesIsPassedOnlyThen() throws QuantityProblem {
    assertThat(answer(FILE, "start switch: ON").headline())
        .contains(
            "The starter limit IS PASSED: duct pressure 47.2 psig, 2.2 psi ABOVE the 45.0 psig"
                + " allowed.");
  }

  @Test
  void underTheLeastItIsPassedToo() throws QuantityProblem {
    String low = FILE.replace("[50, 0], [45, 80]", "[30, 0], [26, 80]");
    assertThat(answer(low).headline())
        .anyMatch(says -> says.contains("psi UNDER the 30.0 psig that it must have"));
  }

  @Test
  void whatCannotBeALimitIsRefused() {
    assertThat(problem("at most: 390 degF", "at most: 40 psig"))
        .contains("It watches a temperature");
    assertThat(problem(", at most: 390 degF", "")).contains("It has no value");
  }

  private static String problem(String from, String to) {
    Reading reading = SystemReader.readText("cart.yaml", FILE.replace(from, to), Kinds.all());
    assertThat(reading.problems()).hasSize(1);
    return reading.problems().get(0).toString();
  }
}
