package dev.offtake.measure;

import dev.offtake.network.Equations;
import dev.offtake.network.Ruled;
import dev.offtake.part.Conditions;
import dev.offtake.solve.Settler;
import dev.offtake.solve.Solution;
import dev.offtake.solve.SteadySolver;
import dev.offtake.solve.SteadySolver.Way;
import dev.offtake.time.Drive;
import dev.offtake.time.Played;
import dev.offtake.time.Settings;
import dev.offtake.time.Transient;
import java.util.Map;
import java.util.concurrent.TimeUnit;
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

/**
 * How time grows with the number of points where one operation is long: a state from nothing, and
 * ten simulated seconds in which the core speeds up.
 */
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 2)
@Measurement(iterations = 3)
public class GrowthFromNothing {
  private static final double FROM = 0.78;
  private static final double TO = 0.80;

  private static Conditions at(double core) {
    return Conditions.standardDay(core, 0.5);
  }

  /** Equations of a network, without any state. */
  @State(Scope.Thread)
  public static class Empty {
    SteadySolver solver;

    /** Lays them out. */
    @Setup
    public void prepare(Growth.Sized sized) {
      Equations equations = new Equations(sized.network, at(FROM));
      Ruled.set(equations, Map.of());
      solver = new SteadySolver(equations);
    }
  }

  /** A network at rest. */
  @State(Scope.Thread)
  public static class Resting {
    Transient time;
    Drive drive;
    Solution start;

    /** Solves. */
    @Setup
    public void prepare(Growth.Sized sized) {
      dev.offtake.solve.Setup slow = dev.offtake.solve.Setup.healthy(at(FROM));
      dev.offtake.solve.Setup fast = dev.offtake.solve.Setup.healthy(at(TO));
      drive = Drive.from(slow).hold(1).ramp(4, fast).hold(5);
      time = new Transient(sized.network);
      start = new Settler(sized.network).solve(slow);
    }
  }

  /** A state from the linear network on. */
  @Benchmark
  public Way stateFromNothing(Empty empty, Clock clock) {
    clock.tick();
    empty.solver.forget();
    Way way = empty.solver.solve();
    if (way != Way.COLD) {
      throw new IllegalStateException("it took more than Newton from the linear network: " + way);
    }
    return way;
  }

  /** Ten simulated seconds. */
  @Benchmark
  public Played tenSeconds(Resting resting, Clock clock) {
    clock.tick();
    Played played = resting.time.run(resting.start, resting.drive, Settings.usual(), at -> true);
    if (played.end() != Played.End.DONE) {
      throw new IllegalStateException(played.toString());
    }
    return played;
  }
}
