package dev.offtake.measure;

import dev.offtake.network.Equations;
import dev.offtake.solve.SteadySolver;
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

/** What the way from KINSOL to the equations and back costs by itself. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, timeUnit = TimeUnit.MILLISECONDS, time = 500)
@Measurement(iterations = 5, timeUnit = TimeUnit.MILLISECONDS, time = 400)
public class KinsolBridge {
  private static final int CALLS = 100;

  private Kinsol kinsol;

  /** Hands the demo twin over. */
  @Setup
  public void prepare() {
    Equations equations = new Twin().equations();
    new SteadySolver(equations).solve();
    kinsol = new Kinsol(equations, true);
  }

  /** A callback for nothing, with the copies that a callback for the residual makes. */
  @Benchmark
  public void emptyCallback(Clock clock) {
    kinsol.callBack(CALLS);
    clock.tick(CALLS);
  }
}
