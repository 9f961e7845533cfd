package dev.offtake.explain;

import static org.assertj.core.api.Assertions.assertThat;

import dev.offtake.network.Balance;
import dev.offtake.network.Equations;
import dev.offtake.solve.Solution;
import dev.offtake.solve.SteadySolver;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.SystemReader;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What an imbalance is worth in pressure, and how it is told. */
class BalanceWordsTest {
  private static Solution.Outcome outcome(double imbalance, double pressureError) {
    return new Solution.Outcome(
        SteadySolver.Way.COLD,
        5,
        imbalance,
        pressureError,
        "duct",
        List.of(),
        List.of(),
        Optional.empty());
  }

  @Test
  void aShareIsToldInParts() {
    assertThat(BalanceWords.of(outcome(1.4e-12, 0)))
        .isEqualTo("air and heat in = out to 2 parts in 10^12");
    assertThat(BalanceWords.of(outcome(1e-10, 0)))
        .isEqualTo("air and heat in = out to 1 part in 10^10");
    assertThat(BalanceWords.of(outcome(9.6e-10, 0)))
        .isEqualTo("air and heat in = out to 1 part in 10^9");
  }

  @Test
  void whereRoundingRulesTheEquivalentPressureIsTold() {
    assertThat(BalanceWords.of(outcome(2.5e-8, 0.0217)))
        .isEqualTo(
            "air and heat in = out to 3 parts in 10^8 at the stillest point (rounding: a pressure"
                + " error of 0.022 Pa)");
    assertThat(BalanceWords.of(outcome(2.5e-8, 1e-7))).endsWith("error of under 0.001 Pa)");
  }

  /**
   * The demo at rest, solved, then one pressure put off by a known share: the pressure error is
   * that share of the pressure.
   */
  @ParameterizedTest
  @ValueSource(doubles = {1e-7, 1e-6})
  void aPressurePutOffIsFoundAgain(double share) throws Exception {
    BleedSystem system =
        SystemReader.read(Path.of("../demo/demo-twin.yaml")).system().orElseThrow();
    Question question = Question.of(system, "ground idle", "", "", List.of());
    Equations equations = new Equations(system.network(), question.setup().conditions());
    assertThat(new SteadySolver(equations).solve()).isNotEqualTo(SteadySolver.Way.NOT_SOLVED);
    int duct = system.network().point("left interstage");
    equations.evaluation().variables[equations.lnP(duct)] += share;
    equations.evaluate();
    Balance balance = new Balance(equations);
    assertThat(balance.holds()).isFalse();
    double moved = share * equations.evaluation().gas[duct].p;
    assertThat(balance.pressureError()).isBetween(0.95 * moved, 1.5 * moved);
  }
}
