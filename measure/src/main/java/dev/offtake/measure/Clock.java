package dev.offtake.measure;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import org.openjdk.jmh.annotations.AuxCounters;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;

/**
 * Time that the benchmark's thread has had of the processor, for each operation and for each unit
 * of the yardstick before and after them.
 */
@State(Scope.Thread)
@AuxCounters(AuxCounters.Type.EVENTS)
public class Clock {
  private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
  private static final int UNITS = 2000;

  /** Nanoseconds of the processor for an operation. */
  public double cpu;

  /** Nanoseconds of the processor for a unit of the yardstick. */
  public double yard;

  private final Yardstick yardstick = new Yardstick();
  private double check;
  private double yardBefore;
  private long begun;
  private long done;

  /** Time that the thread has had so far, ns. */
  static long now() {
    return THREADS.getCurrentThreadCpuTime();
  }

  /** Times the yardstick, then starts. */
  @Setup(Level.Iteration)
  public void start() {
    yardBefore = measureYardstick();
    done = 0;
    begun = now();
  }

  /** Counts an operation. */
  void tick() {
    done++;
  }

  /** Counts operations that were done together. */
  void tick(int operations) {
    done += operations;
  }

  /** Leaves out time that was spent on something else, ns. */
  void leaveOut(long nanos) {
    begun += nanos;
  }

  /** Stops, then times the yardstick again. */
  @TearDown(Level.Iteration)
  public void stop() {
    cpu = (double) (now() - begun) / Math.max(1, done);
    yard = (yardBefore + measureYardstick()) / 2;
  }

  private double measureYardstick() {
    long from = now();
    for (int i = 0; i < UNITS; i++) {
      check += yardstick.unit();
    }
    if (Double.isNaN(check)) {
      throw new IllegalStateException("the yardstick broke");
    }
    return (double) (now() - from) / UNITS;
  }
}
