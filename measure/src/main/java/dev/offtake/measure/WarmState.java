package dev.offtake.measure;

import dev.offtake.network.Equations;
import dev.offtake.part.Conditions;
import dev.offtake.solve.SteadySolver;
import dev.offtake.solve.SteadySolver.Way;
import dev.offtake.solve.Track;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.AuxCounters;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/** One balanced state of the whole demo twin, the engines a touch faster or slower than before. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(2)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
public class WarmState {
  /** What a state starts from. */
  @Param public Predictor predictor = Predictor.NONE;

  private Equations equations;
  private SteadySolver solver;
  private Sweep sweep;
  private Track track;

  /** What happened on the way. */
  @State(Scope.Thread)
  @AuxCounters(AuxCounters.Type.EVENTS)
  public static class Course {
    /** Newton steps for each state. */
    public double steps;

    /** States that were not reached from the one before. */
    public double fallbacks;

    private long counted;
    private long newton;
    private long other;

    /** Starts to count. */
    @Setup(Level.Iteration)
    public void start() {
      counted = 0;
      newton = 0;
      other = 0;
    }

    void count(Way way, int iterations) {
      counted++;
      newton += iterations;
      if (way != Way.WARM) {
        other++;
      }
    }

    /** Tells. */
    @TearDown(Level.Iteration)
    public void stop() {
      steps = (double) newton / Math.max(1, counted);
      fallbacks = other;
    }
  }

  /** The slowest state. */
  @State(Scope.Thread)
  @AuxCounters(AuxCounters.Type.EVENTS)
  public static class Slowest {
    /** By the clock on the wall, µs, with all that else runs on the machine. */
    public double slowestWall;

    /** Of the processor, µs. */
    public double slowestCpu;

    private long wall;
    private long cpu;

    /** Starts. */
    @Setup(Level.Iteration)
    public void start() {
      wall = 0;
      cpu = 0;
    }

    /** Tells. */
    @TearDown(Level.Iteration)
    public void stop() {
      slowestWall = 1e-3 * wall;
      slowestCpu = 1e-3 * cpu;
    }
  }

  /** Reads the demo and solves its first state. */
  @Setup
  public void prepare() {
    Twin twin = new Twin();
    equations = twin.equations();
    sweep = Sweep.of(twin);
    solver = new SteadySolver(equations);
    predictor.choose(solver);
    solver.solve();
    track = new Track(solver);
  }

  /** A state. */
  @Benchmark
  public Way state(Clock clock, Course course) {
    Conditions conditions = sweep.next();
    equations.evaluation().conditions = conditions;
    Way way = predictor == Predictor.PARABOLA ? track.to(conditions.core()) : solver.solve();
    course.count(way, solver.iterations());
    clock.tick();
    return way;
  }

  /** A state that is timed on its own; the time itself costs some. */
  @Benchmark
  public Way timed(Clock clock, Course course, Slowest slowest) {
    long cpu = Clock.now();
    long wall = System.nanoTime();
    Way way = state(clock, course);
    slowest.wall = Math.max(slowest.wall, System.nanoTime() - wall);
    slowest.cpu = Math.max(slowest.cpu, Clock.now() - cpu);
    return way;
  }
}
