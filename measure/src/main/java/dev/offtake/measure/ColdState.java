package dev.offtake.measure;

import dev.offtake.measure.ColdDraws.Draw;
import dev.offtake.network.Equations;
import dev.offtake.solve.SteadySolver;
import dev.offtake.solve.SteadySolver.Way;
import java.util.Arrays;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.AuxCounters;
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

/** A state of the demo twin from nothing, in a process that has solved before. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(2)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
public class ColdState {
  private static final int DRAWS = 200;

  private Equations equations;
  private SteadySolver solver;
  private Draw[] draws;
  private long[] taken;

  /** How the draws differ. */
  @State(Scope.Thread)
  @AuxCounters(AuxCounters.Type.EVENTS)
  public static class Spread {
    /** Time of the processor for the middle draw, µs. */
    public double median;

    /** Time of the processor for the slowest draw, µs. */
    public double worst;

    /** Newton steps for each state. */
    public double steps;

    /** Draws that needed more than Newton from the linear network. */
    public double climbed;

    /** Draws that were not solved. */
    public double refused;
  }

  /** Draws the situations. */
  @Setup
  public void prepare() {
    Twin twin = new Twin();
    draws = new ColdDraws(twin, 1).draw(DRAWS).toArray(Draw[]::new);
    equations = twin.equations();
    solver = new SteadySolver(equations);
    taken = new long[DRAWS];
  }

  /** All draws, one after the other. */
  @Benchmark
  public void state(Clock clock, Spread spread) {
    int steps = 0;
    int climbed = 0;
    int refused = 0;
    for (int d = 0; d < DRAWS; d++) {
      draws[d].write(equations);
      solver.forget();
      long from = Clock.now();
      Way way = solver.solve();
      taken[d] = Clock.now() - from;
      steps += solver.iterations();
      climbed += way == Way.COLD ? 0 : 1;
      refused += way == Way.NOT_SOLVED ? 1 : 0;
    }
    Arrays.sort(taken);
    spread.median = 1e-3 * taken[DRAWS / 2];
    spread.worst = 1e-3 * taken[DRAWS - 1];
    spread.steps = (double) steps / DRAWS;
    spread.climbed = climbed;
    spread.refused = refused;
    clock.tick(DRAWS);
  }
}
