package dev.offtake.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.part.Branch;
import dev.offtake.part.Conditions;
import dev.offtake.part.Evaluation;
import dev.offtake.solve.SteadySolver;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The judge of answers against the solver's residual, and against states that are no answers. */
class BalanceTest {
  private final Equations equations =
      new Equations(Demos.demo("twin").network(), Conditions.standardDay(0.62, 0.24));

  /** Each row, summed afresh from the streams, at states that nobody solved. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void residualRowsAreTheSumsOfTheStreams(long seed) {
    Random random = new Random(seed);
    Evaluation e = equations.evaluation();
    equations.refreshBoundary();
    for (int c = 0; c < equations.size(); c++) {
      boolean temperature = c < 2 * equations.innerPoints() && c % 2 == 1;
      e.variables[equations.variableOf(c)] =
          temperature ? 300 + 300 * random.nextDouble() : 1.5 * random.nextDouble();
    }
    equations.evaluate();
    double[] residual = new double[equations.size()];
    equations.residual(residual);
    for (int i = 0; i < equations.innerPoints(); i++) {
      double wall = equations.network().points().get(i).wall();
      double mass = 0;
      double heat = -wall * (e.gas[i].t - e.conditions.ambientT());
      double size = 1e-9;
      for (int part = 0; part < equations.network().parts().size(); part++) {
        for (Branch b : equations.branches(part)) {
          double sign = b.to == i ? 1 : b.from == i ? -1 : 0;
          mass += sign * b.mdot;
          heat += sign * b.mdot * ((b.to == i ? b.hTo : b.hFrom) - e.gas[i].h);
          size += Math.abs(sign * b.mdot);
        }
      }
      assertThat(residual[2 * i]).isCloseTo(mass, within(1e-13 * size));
      assertThat(residual[2 * i + 1]).isCloseTo(heat, within(1e-13 * size * 1e6 + 1e-9));
    }
  }

  @Test
  void holdsAtAnAnswerAndNotBesideIt() {
    SteadySolver solver = new SteadySolver(equations);
    assertThat(solver.solve()).isNotEqualTo(SteadySolver.Way.NOT_SOLVED);
    Balance balance = new Balance(equations);
    assertThat(balance.holds()).isTrue();
    double[] x = equations.evaluation().variables;
    int unseen = 0;
    for (int c = 0; c < 2 * equations.innerPoints(); c++) {
      int v = equations.variableOf(c);
      double kept = x[v];
      x[v] = kept + 1e-4 * Math.max(1, Math.abs(kept));
      equations.evaluate();
      if (balance.holds()) {
        unseen++;
      } else {
        assertThat(balance.worst()).isGreaterThan(1);
        assertThat(neighbours(c / 2)[balance.worstPoint()]).isTrue();
      }
      x[v] = kept;
    }
    equations.evaluate();
    assertThat(balance.holds()).isTrue();
    assertThat(unseen).isZero();
  }

  /** A part of no number passes for nothing: a NaN never balances. */
  @Test
  void nanNeverBalances() {
    SteadySolver solver = new SteadySolver(equations);
    solver.solve();
    equations.evaluation().variables[equations.variableOf(0)] = Double.NaN;
    equations.evaluate();
    Balance balance = new Balance(equations);
    assertThat(balance.holds()).isFalse();
    assertThat(balance.worst()).isInfinite();
  }

  /** The point itself and those that share a part with it or whose part senses it. */
  private boolean[] neighbours(int point) {
    boolean[] near = new boolean[equations.innerPoints()];
    near[point] = true;
    for (int part = 0; part < equations.network().parts().size(); part++) {
      for (Branch b : equations.branches(part)) {
        boolean depends = false;
        for (int v : b.variables) {
          depends |= v == equations.lnP(point) || v == equations.lnP(point) + 1;
        }
        if (depends && b.from < near.length) {
          near[b.from] = true;
        }
        if (depends && b.to < near.length) {
          near[b.to] = true;
        }
      }
    }
    return near;
  }
}
