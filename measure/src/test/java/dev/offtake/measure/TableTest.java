package dev.offtake.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.network.Balance;
import dev.offtake.network.Equations;
import dev.offtake.solve.SteadySolver;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What is printed, and that what is measured are balanced states of the demo. */
class TableTest {
  private static Row growth(int points, double nanos) {
    return new Row(
        "Growth", "state", Map.of("points", "" + points), nanos, 1000, Double.NaN, Map.of());
  }

  @Test
  void growthIsAnExponentAndTooMuchIsMarked() {
    String table = Table.print(List.of(growth(100, 1e6), growth(1000, 1e7), growth(10_000, 1e9)));
    assertThat(table).contains("| state | 1,000 | 10,000 | 1.00 | 1,000,000 | 2.00 ! |  |");
  }

  @Test
  void timesAreRatiosToBothBaselines() {
    Row dense = new Row("StatePieces", "denseLu", Map.of(), 10_000, 2000, 0, Map.of());
    Row laws = new Row("StatePieces", "laws", Map.of(), 2500, 1000, 0, Map.of("steps", 1.25));
    assertThat(Table.print(List.of(dense, laws)))
        .contains("| denseLu | 10.0 | 100,000 | 5.00 | 1.00 | 0 |  |")
        .contains("| laws | 2.50 | 400,000 | 2.50 | 0.500 | 0 | steps 1.25 |");
  }

  @Test
  void theSweepMovesByAFractionOfAPercentAndTurnsAtItsEnds() {
    Sweep sweep = Sweep.of(new Twin());
    double before = 0.6;
    double lowest = 1;
    double highest = 0;
    for (int i = 0; i < 2 * sweep.length(); i++) {
      double core = sweep.next().core();
      assertThat(Math.abs(core - before)).isCloseTo(0.0004, within(1e-9));
      lowest = Math.min(lowest, core);
      highest = Math.max(highest, core);
      before = core;
    }
    assertThat(lowest).isCloseTo(0.6, within(1e-9));
    assertThat(highest).isCloseTo(0.996, within(1e-9));
  }

  @Test
  void whatIsTimedBalances() {
    Twin twin = new Twin();
    Equations equations = twin.equations();
    SteadySolver solver = new SteadySolver(equations);
    Sweep sweep = Sweep.of(twin);
    Balance balance = new Balance(equations);
    for (int i = 0; i < 50; i++) {
      equations.evaluation().conditions = sweep.next();
      assertThat(solver.solve()).isNotEqualTo(SteadySolver.Way.NOT_SOLVED);
      equations.evaluate();
      assertThat(balance.holds()).isTrue();
    }
  }
}
