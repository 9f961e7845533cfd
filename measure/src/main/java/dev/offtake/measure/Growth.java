package dev.offtake.measure;

import dev.offtake.measure.WarmState.Course;
import dev.offtake.network.Balance;
import dev.offtake.network.Equations;
import dev.offtake.network.Network;
import dev.offtake.network.Ruled;
import dev.offtake.part.Conditions;
import dev.offtake.solve.SteadySolver;
import dev.offtake.solve.SteadySolver.Way;
import dev.offtake.sparse.SparseLu;
import java.io.IOException;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** How time grows with the number of points: a warm state, its pieces, and what is done once. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, timeUnit = TimeUnit.MILLISECONDS, time = 700)
@Measurement(iterations = 4, timeUnit = TimeUnit.MILLISECONDS, time = 500)
public class Growth {

  /** A network of some size. */
  @State(Scope.Thread)
  public static class Sized {
    /** Inner points. */
    @Param({"100", "1000", "10000"})
    public int points;

    Network network;

    /** Reads the network. */
    @Setup
    public void read() {
      network = SyntheticNetwork.of(points);
    }
  }

  /** A network in a state. */
  @State(Scope.Thread)
  public static class Solved {
    final Sweep sweep = Sweep.around80();
    Equations equations;
    SteadySolver solver;
    Jitter jitter;
    SparseLu lu;
    double[] values;
    double[] residual;
    double[] step;

    /** Solves. */
    @Setup
    public void solve(Sized sized) throws IOException {
      equations = new Equations(sized.network, Conditions.standardDay(0.78, 0.5));
      Ruled.set(equations, Map.of());
      solver = new SteadySolver(equations);
      SyntheticNetwork.solve(equations, solver);
      jitter = new Jitter(equations);
      lu = new SparseLu(equations.pattern());
      values = new double[equations.pattern().size()];
      residual = new double[equations.size()];
      step = new double[equations.size()];
      equations.jacobian(values);
      equations.residual(residual);
      lu.order(values);
    }
  }

  /** A warm state with the usual predictor. */
  @Benchmark
  public Way state(Solved solved, Clock clock, Course course) {
    solved.equations.evaluation().conditions = solved.sweep.next();
    Way way = solved.solver.solve();
    course.count(way, solved.solver.iterations());
    clock.tick();
    return way;
  }

  /** Evaluates the laws. */
  @Benchmark
  public void laws(Solved solved, Clock clock) {
    clock.tick();
    solved.jitter.next();
    solved.equations.evaluate();
  }

  /** Assembles the Jacobian. */
  @Benchmark
  public void assembly(Solved solved, Clock clock) {
    clock.tick();
    solved.equations.jacobian(solved.values);
  }

  /** Factors with a known order of pivots. */
  @Benchmark
  public boolean refactorisation(Solved solved, Clock clock) {
    clock.tick();
    return solved.lu.refactor(solved.values);
  }

  /** Solves with the factors. */
  @Benchmark
  public void solution(Solved solved, Clock clock) {
    clock.tick();
    solved.lu.solve(solved.residual, solved.step);
  }

  /** Finds an order of pivots: once for a network, and again when the values turn against it. */
  @Benchmark
  public boolean ordering(Solved solved, Clock clock) {
    clock.tick();
    return solved.lu.order(solved.values);
  }

  /** Lays the equations out: once for a network. */
  @Benchmark
  public Balance layout(Sized sized, Clock clock) {
    clock.tick();
    return new Balance(new Equations(sized.network, Conditions.standardDay(0.78, 0.5)));
  }

  /** What a copy of a state costs beside solving it: the static pressure at every point. */
  @Benchmark
  public double sensedPressures(Solved solved, Clock clock) {
    clock.tick();
    double sum = 0;
    for (int i = 0; i < solved.equations.innerPoints(); i++) {
      sum += solved.equations.sensedPressure(i);
    }
    return sum;
  }
}
