package dev.offtake.measure;

import dev.offtake.network.Equations;
import dev.offtake.part.Conditions;
import dev.offtake.solve.SteadySolver;
import dev.offtake.solve.SteadySolver.Way;
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

/** The states of {@link WarmState} by SUNDIALS KINSOL with KLU on the same equations. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
public class KinsolState {
  /** How KINSOL is told to solve. */
  public enum How {
    /** On the line through the last two states, a fresh Jacobian at each step. */
    SECANT(true, true),
    /** As SECANT, but the pattern is analysed for each state, as KINSOL does untold. */
    SECANT_ANALYSED_ANEW(false, true),
    /** At the last state, a fresh Jacobian at each step. */
    LAST(true, false);

    final boolean keepAnalysis;
    final boolean secant;

    How(boolean keepAnalysis, boolean secant) {
      this.keepAnalysis = keepAnalysis;
      this.secant = secant;
    }
  }

  /** How it solves. */
  @Param public How how = How.SECANT;

  /** Whether steps are shortened; without, the sweep does not converge anywhere. */
  private static final boolean LINE_SEARCH = true;

  private Equations equations;
  private Sweep sweep;
  private Kinsol kinsol;
  private double[][] states;
  private double[] before;
  private double[] last;
  private double[] next;
  private double beforeCore;
  private double lastCore;

  /** What happened on the way. */
  @State(Scope.Thread)
  @AuxCounters(AuxCounters.Type.EVENTS)
  public static class Course {
    /** Newton steps for each state. */
    public double steps;

    /** Calls into Java for each state. */
    public double callbacks;

    /** States of a hundred that KINSOL does not bring to balance. */
    public double failedPercent;

    private long counted;
    private long newton;
    private long called;
    private long wrong;

    /** Starts to count. */
    @Setup(Level.Iteration)
    public void begin() {
      counted = 0;
      newton = 0;
      called = 0;
      wrong = 0;
    }

    void count(Kinsol kinsol, boolean balanced) {
      counted++;
      newton += kinsol.steps();
      called += kinsol.callbacks();
      wrong += balanced ? 0 : 1;
    }

    /** Tells. */
    @TearDown(Level.Iteration)
    public void end() {
      steps = (double) newton / Math.max(1, counted);
      callbacks = (double) called / Math.max(1, counted);
      failedPercent = 100.0 * wrong / Math.max(1, counted);
    }
  }

  /** Solves all states by Offtake, then hands over. */
  @Setup
  public void prepare() {
    Twin twin = new Twin();
    equations = twin.equations();
    sweep = Sweep.of(twin);
    SteadySolver solver = new SteadySolver(equations);
    states = new double[sweep.length()][];
    for (int i = 0; i < 2 * states.length; i++) {
      equations.evaluation().conditions = sweep.next();
      if (solver.solve() == Way.NOT_SOLVED) {
        throw new IllegalStateException("Offtake does not solve the sweep");
      }
      states[sweep.station()] = equations.evaluation().variables.clone();
    }
    kinsol = new Kinsol(equations, how.keepAnalysis);
    last = kinsol.currentStart().clone();
    before = last.clone();
    next = last.clone();
    lastCore = equations.evaluation().conditions.core();
    beforeCore = lastCore;
  }

  /** A state. */
  @Benchmark
  public boolean state(Clock clock, Course course) {
    Conditions conditions = sweep.next();
    equations.evaluation().conditions = conditions;
    equations.refreshBoundary();
    predict(conditions.core());
    boolean converged = kinsol.solve(next, LINE_SEARCH);
    boolean solved = kinsol.balanced() && converged;
    course.count(kinsol, solved);
    clock.tick();
    if (solved) {
      turn(conditions.core());
    } else {
      long from = Clock.now();
      restart(conditions.core());
      clock.leaveOut(Clock.now() - from);
    }
    return solved;
  }

  /** Where KINSOL finds nothing, the state is taken from Offtake, so that the sweep goes on. */
  private void restart(double core) {
    double[] state = states[sweep.station()];
    System.arraycopy(state, 0, equations.evaluation().variables, 0, state.length);
    equations.evaluate();
    kinsol.balanced();
    System.arraycopy(kinsol.currentStart(), 0, last, 0, last.length);
    System.arraycopy(last, 0, before, 0, last.length);
    lastCore = core;
    beforeCore = core;
  }

  private void predict(double core) {
    double reach = !how.secant || lastCore == beforeCore ? 0 : reach(core);
    for (int c = 0; c < next.length; c++) {
      next[c] = last[c] + reach * (last[c] - before[c]);
    }
  }

  private double reach(double core) {
    return (core - lastCore) / (lastCore - beforeCore);
  }

  private void turn(double core) {
    double[] free = before;
    before = last;
    last = next;
    next = free;
    beforeCore = lastCore;
    lastCore = core;
  }
}
