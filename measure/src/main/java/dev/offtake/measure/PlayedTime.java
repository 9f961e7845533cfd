package dev.offtake.measure;

import dev.offtake.time.Drive;
import dev.offtake.time.Played;
import dev.offtake.time.Settings;
import dev.offtake.time.Transient;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.AuxCounters;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/**
 * 120 s of the demo twin: ground idle, a slow and a quick acceleration to take-off with a return to
 * idle between, at the usual tolerance.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(2)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
public class PlayedTime {
  private static final double IDLE = 0.62;
  private static final double TAKE_OFF = 0.99;

  private Transient time;
  private Drive drive;
  private dev.offtake.solve.Solution start;
  private Played played;

  /** What one playing took. */
  @State(Scope.Thread)
  @AuxCounters(AuxCounters.Type.EVENTS)
  public static class Took {
    /** Steps in time. */
    public double steps;

    /** Newton steps. */
    public double newton;

    /** Simulated seconds for each second of the clock on the wall. */
    public double timesRealTime;

    private long count;
    private long nanos;
    private double seconds;

    /** Starts to count. */
    @Setup(Level.Iteration)
    public void start() {
      count = 0;
      nanos = 0;
      seconds = 0;
      steps = 0;
      newton = 0;
    }

    void count(Played one, long nanoseconds) {
      count++;
      nanos += nanoseconds;
      seconds += one.seconds();
      steps += one.cost().steps();
      newton += one.cost().iterations();
    }

    /** Tells. */
    @TearDown(Level.Iteration)
    public void stop() {
      steps /= Math.max(1, count);
      newton /= Math.max(1, count);
      timesRealTime = 1e9 * seconds / Math.max(1, nanos);
    }
  }

  /** Reads the demo and solves its first state. */
  @Setup
  public void prepare() {
    Twin twin = new Twin();
    dev.offtake.solve.Setup idle = twin.at(IDLE);
    dev.offtake.solve.Setup high = twin.at(TAKE_OFF);
    drive =
        Drive.from(idle)
            .hold(10)
            .ramp(8, high)
            .hold(30)
            .ramp(8, idle)
            .hold(14)
            .ramp(6, high)
            .hold(44);
    time = new Transient(twin.system().network());
    start = new dev.offtake.solve.Settler(twin.system().network()).solve(idle);
    played = time.run(start, drive, Settings.usual(), seconds -> true);
  }

  /** The whole course. */
  @Benchmark
  public Played course(Clock clock, Took took) {
    clock.tick();
    long before = System.nanoTime();
    Played one = time.run(start, drive, Settings.usual(), seconds -> true);
    took.count(one, System.nanoTime() - before);
    return one;
  }

  /** One state out of the course, as a value. */
  @Benchmark
  public dev.offtake.solve.Solution instant(Clock clock) {
    clock.tick();
    return played.at(75);
  }
}
