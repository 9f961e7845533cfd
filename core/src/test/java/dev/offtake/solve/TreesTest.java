package dev.offtake.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.air.Air;
import dev.offtake.network.Balance;
import dev.offtake.network.Equations;
import dev.offtake.network.Network;
import dev.offtake.network.Ruled;
import dev.offtake.part.Branch;
import dev.offtake.part.Conditions;
import dev.offtake.part.Evaluation;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Large networks: solved, balanced, and what comes in goes out, and no place is warmer than the
 * sources.
 */
class TreesTest {
  @ParameterizedTest
  @CsvSource({"100, 1", "100, 2", "100, 3", "300, 1", "1000, 1", "1000, 2", "3000, 2"})
  void whatComesInGoesOut(int points, long seed) {
    Network network = Trees.system(points, seed).network();
    assertThat(network.points()).hasSize(points);
    Equations equations = new Equations(network, Conditions.standardDay(0.85, 0.5));
    Ruled.set(equations, Map.of());
    SteadySolver solver = new SteadySolver(equations);
    SteadySolver.Way way = solver.solve();
    assertThat(way).isNotEqualTo(SteadySolver.Way.NOT_SOLVED);
    assertThat(new Balance(equations).holds()).isTrue();
    Totals totals = new Totals(equations);
    assertThat(totals.warmest).isLessThanOrEqualTo(totals.hottestSource + 1e-6);
    assertThat(totals.in).isGreaterThan(0.002 * points);
    assertThat(totals.out).isCloseTo(totals.in, within(1e-8 * totals.in));
    assertThat(totals.heatOut).isCloseTo(totals.heatIn, within(1e-8 * totals.heatIn));
  }

  @Test
  void theSameSeedGivesTheSameSystem() {
    assertThat(Trees.text(500, 7)).isEqualTo(Trees.text(500, 7)).isNotEqualTo(Trees.text(500, 8));
  }

  /**
   * From nothing, in about as many steps as a hundredth of its size needs: no point that tosses
   * about holds back the others.
   */
  @Test
  void tenThousandPointsAreSolvedFromNothing() {
    Equations equations =
        new Equations(Trees.system(10_000, 1).network(), Conditions.standardDay(0.78, 0.5));
    Ruled.set(equations, Map.of());
    SteadySolver solver = new SteadySolver(equations);

    assertThat(solver.solve()).isEqualTo(SteadySolver.Way.COLD);
    assertThat(solver.iterations()).isLessThan(300);
    assertThat(new Balance(equations).holds()).isTrue();
  }

  /** The largest size is generated in full, loops and all. */
  @Test
  void tenThousandPointsHaveLoops() {
    String text = Trees.text(10_000, 1);
    long crosses = text.lines().filter(l -> l.contains(" cross ") || l.contains(" link:")).count();
    assertThat(crosses).isGreaterThan(800);
  }

  /** Air and heat over the border, summed over streams; heat counts from 288.15 K. */
  private static final class Totals {
    double in;
    double out;
    double heatIn;
    double heatOut;
    double warmest;
    double hottestSource;

    Totals(Equations equations) {
      Evaluation e = equations.evaluation();
      int inner = equations.innerPoints();
      double zero = Air.h(288.15);
      for (int part = 0; part < equations.network().parts().size(); part++) {
        for (Branch b : equations.branches(part)) {
          // What a duct loses on its way leaves the system too.
          heatOut += b.mdot * (b.hFrom - b.hTo);
          if (b.from >= inner) {
            in += b.mdot;
            hottestSource = Math.max(hottestSource, e.gas[b.from].t);
            heatIn += b.mdot * (b.hFrom - zero);
          }
          if (b.to >= inner) {
            out += b.mdot;
            heatOut += b.mdot * (b.hTo - zero);
          }
        }
      }
      for (int i = 0; i < inner; i++) {
        warmest = Math.max(warmest, e.gas[i].t);
        heatOut += equations.network().points().get(i).wall() * (e.gas[i].t - 288.15);
      }
    }
  }
}
