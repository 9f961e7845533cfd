package dev.offtake.measure;

import dev.offtake.network.Balance;
import dev.offtake.network.Equations;
import dev.offtake.solve.SteadySolver;
import dev.offtake.sparse.SparseLu;
import java.util.concurrent.TimeUnit;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** What a state of the demo twin is made of, each piece on its own. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, timeUnit = TimeUnit.MILLISECONDS, time = 500)
@Measurement(iterations = 5, timeUnit = TimeUnit.MILLISECONDS, time = 400)
public class StatePieces {
  private Equations equations;
  private Sweep sweep;
  private Jitter jitter;
  private Balance balance;
  private SparseLu lu;
  private double[][] jacobians;
  private double[] residual;
  private double[] step;
  private double[] change;
  private DMatrixRMaj dense;
  private DMatrixRMaj copy;
  private DMatrixRMaj right;
  private DMatrixRMaj left;
  private LinearSolverDense<DMatrixRMaj> denseLu;
  private int at;

  /** Solves one state and keeps the matrices around it. */
  @Setup
  public void prepare() {
    Twin twin = new Twin();
    equations = twin.equations();
    sweep = Sweep.of(twin);
    new SteadySolver(equations).solve();
    jitter = new Jitter(equations);
    balance = new Balance(equations);
    lu = new SparseLu(equations.pattern());
    residual = new double[equations.size()];
    step = new double[equations.size()];
    change = equations.evaluation().variables.clone();
    jacobians = new double[jitter.count()][equations.pattern().size()];
    for (int s = 0; s < jacobians.length; s++) {
      jitter.next();
      equations.evaluate();
      equations.jacobian(jacobians[s]);
    }
    equations.residual(residual);
    lu.order(jacobians[0]);
    prepareDense();
  }

  private void prepareDense() {
    int n = equations.size();
    dense = new DMatrixRMaj(n, n);
    for (int r = 0; r < n; r++) {
      for (int s = equations.pattern().start(r); s < equations.pattern().start(r + 1); s++) {
        dense.set(r, equations.pattern().column(s), jacobians[0][s]);
      }
    }
    copy = dense.copy();
    right = new DMatrixRMaj(n, 1, true, residual.clone());
    left = new DMatrixRMaj(n, 1);
    denseLu = LinearSolverFactory_DDRM.lu(n);
  }

  private double[] nextJacobian() {
    at = (at + 1) % jacobians.length;
    return jacobians[at];
  }

  /** Writes the air outside and behind the taps, after the power has moved. */
  @Benchmark
  public double boundary(Clock clock) {
    clock.tick();
    equations.setConditions(sweep.next());
    equations.refreshBoundary();
    return equations.evaluation().variables[equations.lnP(equations.ambient())];
  }

  /** Evaluates the laws of all parts, with all their partials. */
  @Benchmark
  public double laws(Clock clock) {
    clock.tick();
    jitter.next();
    equations.evaluate();
    return equations.branches(0)[0].mdot;
  }

  /** Sums the laws up into the residual. */
  @Benchmark
  public double[] residual(Clock clock) {
    clock.tick();
    equations.residual(residual);
    return residual;
  }

  /** Assembles the Jacobian. */
  @Benchmark
  public double[] assembly(Clock clock) {
    clock.tick();
    equations.jacobian(jacobians[0]);
    return jacobians[0];
  }

  /** Factors a matrix whose order of pivots is known. */
  @Benchmark
  public boolean refactorisation(Clock clock) {
    clock.tick();
    return lu.refactor(nextJacobian());
  }

  /** Solves with the factors, one refinement included. */
  @Benchmark
  public double[] solution(Clock clock) {
    clock.tick();
    lu.solve(residual, step);
    return step;
  }

  /** Judges whether a state balances. */
  @Benchmark
  public boolean balance(Clock clock) {
    clock.tick();
    return balance.holds();
  }

  /** The right-hand side of the tangent. */
  @Benchmark
  public double[] tangentSide(Clock clock) {
    clock.tick();
    equations.boundaryShift(change, step);
    return step;
  }

  /** Finds an order of pivots and factors. */
  @Benchmark
  public boolean ordering(Clock clock) {
    clock.tick();
    return lu.order(nextJacobian());
  }

  /** What all times are compared with: the same Jacobian as a dense matrix, by EJML. */
  @Benchmark
  public DMatrixRMaj denseLu(Clock clock) {
    clock.tick();
    System.arraycopy(dense.data, 0, copy.data, 0, dense.data.length);
    if (!denseLu.setA(copy)) {
      throw new IllegalStateException("the Jacobian is singular");
    }
    denseLu.solve(right, left);
    return left;
  }
}
