package dev.offtake.time;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import dev.offtake.explain.Question;
import dev.offtake.network.Demos;
import dev.offtake.network.Equations;
import dev.offtake.solve.Present;
import dev.offtake.solve.Settler;
import dev.offtake.solve.Setup;
import dev.offtake.solve.Solution;
import dev.offtake.system.BleedSystem;
import java.lang.management.ManagementFactory;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A step of a slam allocates nothing: its loop runs thousands of times. */
class AllocationTest {
  private static final double LENGTH = 5e-3;
  private static final int STEPS = 1000;

  private static Setup at(BleedSystem system, String power) throws Exception {
    return Question.of(system, power, "", "", List.of()).setup();
  }

  @Test
  void stepsOfASlamAllocateNothing() throws Exception {
    BleedSystem twin = Demos.demo("twin");
    Drive drive = Drive.from(at(twin, "ground idle")).ramp(30, at(twin, "take-off"));
    Solution start = new Settler(twin.network()).solve(drive.start());
    Equations equations = new Equations(twin.network(), start.conditions());
    new Present(equations, start);
    Timetable timetable = new Timetable(equations, drive);
    AirInTime model = new AirInTime(equations, timetable, true, Pace::usual);
    Step step = new Step(model);
    double[] y = new double[model.size()];
    model.steady(y);
    timetable.enter(1);
    step.start(0, y);
    run(step, 0);

    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    long thread = Thread.currentThread().getId();
    long before = threads.getThreadAllocatedBytes(thread);
    run(step, STEPS);
    long grown = threads.getThreadAllocatedBytes(thread) - before;
    // Conditions on the way are new objects: one for each of three stages, 100 bytes or so.
    assertThat(grown).isLessThan(STEPS * 3 * 200L);
  }

  private static void run(Step step, int first) {
    for (int k = first; k < first + STEPS; k++) {
      assertThat(step.make(k * LENGTH, LENGTH, Settings.USUAL_TOLERANCE)).isLessThan(1e3);
      step.goOn(LENGTH);
    }
  }
}
