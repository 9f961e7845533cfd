package dev.offtake.solve;

import dev.offtake.network.Equations;
import dev.offtake.part.Branch;
import dev.offtake.part.Evaluation;
import dev.offtake.sparse.SparseLu;
import dev.offtake.sparse.SparsePattern;
import java.util.ArrayList;
import java.util.List;

/**
 * A first guess: pressures of the linear network in which each stream is its nominal area times the
 * difference of the squares of the pressures. All pressures equal, the obvious guess, is a singular
 * point of the flow laws.
 */
final class LinearStart {
  /**
   * Share of the largest area that ties every point weakly to the air outside, so that the system
   * is regular.
   */
  private static final double TIE = 1e-6;

  private final Equations equations;
  private final List<Branch> branches = new ArrayList<>();
  private final SparsePattern pattern;
  private final double tie;

  LinearStart(Equations equations) {
    this.equations = equations;
    double largest = 0;
    for (int part = 0; part < equations.network().parts().size(); part++) {
      for (Branch branch : equations.branches(part)) {
        branches.add(branch);
        largest = Math.max(largest, branch.nominalArea);
      }
    }
    tie = TIE * Math.max(largest, 1e-6);
    pattern = pattern();
  }

  private SparsePattern pattern() {
    int n = equations.innerPoints();
    List<int[]> pairs = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      pairs.add(new int[] {i, i});
    }
    for (Branch b : branches) {
      if (b.from < n && b.to < n) {
        pairs.add(new int[] {b.from, b.to});
        pairs.add(new int[] {b.to, b.from});
      }
    }
    return SparsePattern.of(
        n,
        pairs.stream().mapToInt(p -> p[0]).toArray(),
        pairs.stream().mapToInt(p -> p[1]).toArray());
  }

  /** Writes the guess into the variables. The boundary must be up to date. */
  void write() {
    int n = equations.innerPoints();
    double[] hot = solve(true);
    double[] square = solve(false);
    Evaluation e = equations.evaluation();
    for (int i = 0; i < n; i++) {
      double p = Math.sqrt(Math.max(square[i], 1e6));
      e.variables[equations.lnP(i)] = Math.log(p / 1e5);
      e.variables[equations.lnP(i) + 1] = Math.min(Math.max(hot[i], 220), 1100);
    }
    for (int c = 2 * n; c < equations.size(); c++) {
      e.variables[equations.variableOf(c)] = 0;
    }
    equations.evaluate();
    settleSenses();
  }

  /**
   * A sensed pressure starts from where its own row puts it, so that regulators begin with sensible
   * openings.
   */
  private void settleSenses() {
    double[] residual = new double[equations.size()];
    equations.residual(residual);
    double[] x = equations.evaluation().variables;
    for (int c = 2 * equations.innerPoints(); c < equations.size(); c++) {
      x[equations.variableOf(c)] -= residual[c];
    }
  }

  private double[] solve(boolean temperature) {
    int n = equations.innerPoints();
    double[] values = new double[pattern.size()];
    double[] rhs = new double[n];
    double outside = boundary(equations.ambient(), temperature);
    for (int i = 0; i < n; i++) {
      values[pattern.slot(i, i)] += tie;
      rhs[i] += tie * outside;
    }
    for (Branch b : branches) {
      addEnd(b, b.from, b.to, temperature, values, rhs);
      addEnd(b, b.to, b.from, temperature, values, rhs);
    }
    SparseLu lu = new SparseLu(pattern);
    double[] x = new double[n];
    if (n > 0 && lu.order(values)) {
      lu.solve(rhs, x);
    }
    return x;
  }

  private void addEnd(
      Branch b, int here, int there, boolean temperature, double[] values, double[] rhs) {
    if (here >= equations.innerPoints()) {
      return;
    }
    double g = Math.max(b.nominalArea, tie);
    values[pattern.slot(here, here)] += g;
    if (there < equations.innerPoints()) {
      values[pattern.slot(here, there)] -= g;
    } else {
      rhs[here] += g * boundary(there, temperature);
    }
  }

  private double boundary(int point, boolean temperature) {
    double p = equations.evaluation().gas[point].p;
    return temperature ? equations.evaluation().gas[point].t : p * p;
  }
}
