package dev.offtake.explain;

import static org.assertj.core.api.Assertions.assertThat;

import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.Style;
import dev.offtake.solve.Settler;
import dev.offtake.solve.Solution;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.SystemReader;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The one sentence above all others, against the state that it tells. */
class LeadSentenceTest {
  private static final BleedSystem DEMO =
      SystemReader.read(Path.of("../demo/demo-twin.yaml")).system().orElseThrow();

  private static String lead(String at, List<String> sets, Style style) throws QuantityProblem {
    Question question = Question.of(DEMO, at, "", "", sets);
    Solution solution = new Settler(question.network()).solve(question.setup());
    return Glance.of(question, solution, style).lead();
  }

  @Test
  void bothSidesAreToldOnceWhereTheyAreAlike() throws QuantityProblem {
    Question question = Question.of(DEMO, "ground idle", "", "", List.of());
    Solution solution = new Settler(question.network()).solve(question.setup());
    double behind = solution.pressure(DEMO.network().point("left interstage"));
    double ahead = solution.pressure(DEMO.network().point("left mid duct"));
    for (Style style : Style.values()) {
      String holds = style.print(behind - ahead, Dimension.PRESSURE_DIFFERENCE);
      assertThat(Glance.of(question, solution, style).lead())
          .isEqualTo(
              "Ground idle: the high tap feeds both sides. The left and right mid check valves are"
                  + " held shut by "
                  + holds
                  + ".");
    }
  }

  @Test
  void sidesThatDifferAreToldApart() throws QuantityProblem {
    // Between the two handovers of the demo, whose high stages have different sets.
    assertThat(lead("78.6 %", List.of(), Style.SHOP))
        .startsWith(
            "Core 78.6 %: the high tap feeds the left side; the mid tap feeds the right side");
  }

  @Test
  void aValveThatPressureShutsSaysWhichPressure() throws QuantityProblem {
    assertThat(lead("take-off", List.of(), Style.SHOP))
        .startsWith("Take-off: the mid tap feeds both sides. The left high stage valve is shut: ")
        .contains("is above its set 32.0 psig");
  }

  @Test
  void whatGoesShortComesFirst() throws QuantityProblem {
    assertThat(lead("56 %", List.of("wing anti-ice: ON"), Style.SHOP)).contains(" go short.");
  }

  @Test
  void whatIsBrokenIsNamed() throws QuantityProblem {
    Question healthy = Question.of(DEMO, "ground idle", "", "", List.of());
    Question broken = healthy.broken(List.of("left mid check valve stuck 1/3"));
    Solution was = new Settler(healthy.network()).solve(healthy.setup());
    Solution is = new Settler(broken.network()).solve(broken.setup());
    assertThat(Glance.lead(broken, was, is, Style.SHOP))
        .startsWith("Ground idle, left mid check valve stuck 33 % open: ")
        .contains("runs back into the engine at the left mid tap");
  }
}
