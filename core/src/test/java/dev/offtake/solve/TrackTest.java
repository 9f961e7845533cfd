package dev.offtake.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.network.Demos;
import dev.offtake.network.Equations;
import dev.offtake.part.Conditions;
import dev.offtake.part.Part;
import dev.offtake.system.BleedSystem;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Following a state along a sweep of the demo twin, up and down through its handovers. */
class TrackTest {
  private static final double STRIDE = 0.0004;
  private static final int STATIONS = 991;

  private final Equations equations = twin();

  private static Conditions at(int station) {
    double core = 0.6 + STRIDE * station;
    return Conditions.standardDay(core, Math.max(0.05, 1.9 * core - 0.9));
  }

  /** The equations with every command as it stands at the sweep's beginning. */
  private static Equations twin() {
    BleedSystem twin = Demos.demo("twin");
    Map<String, String> first =
        twin.switches().entrySet().stream()
            .collect(Collectors.toMap(Map.Entry::getKey, e -> e.getValue().get(0)));
    Setup setup = new Setup(at(0), first, Map.of(), Map.of());
    Solution solution = new Settler(twin.network()).solve(setup);
    assertThat(solution.solved()).isTrue();
    Equations equations = new Equations(twin.network(), at(0));
    List<Part> parts = twin.network().parts();
    for (int i = 0; i < parts.size(); i++) {
      for (int k = 0; k < parts.get(i).controls().size(); k++) {
        equations.evaluation().controls[equations.firstControl(i) + k] = solution.control(i, k);
      }
    }
    return equations;
  }

  private static int station(int step) {
    return step < STATIONS ? step : 2 * (STATIONS - 1) - step;
  }

  /** What the benchmarks time has to be what they say: each state from the one before. */
  @Test
  void noStateOfTheSweepNeedsMoreThanTheOneBefore() {
    SteadySolver solver = new SteadySolver(equations);
    equations.setConditions(at(0));
    assertThat(solver.solve()).isNotEqualTo(SteadySolver.Way.NOT_SOLVED);
    for (int step = 1; step < 2 * STATIONS - 1; step++) {
      equations.setConditions(at(station(step)));
      assertThat(solver.solve()).as("step " + step).isEqualTo(SteadySolver.Way.WARM);
    }
  }

  /** The guess decides how soon an answer is found, never which. */
  @Test
  void aTrackEndsWhereAColdStartDoes() {
    Track track = new Track(new SteadySolver(equations));
    for (int step = 0; step < STATIONS; step++) {
      equations.setConditions(at(step));
      assertThat(track.to(step)).isNotEqualTo(SteadySolver.Way.NOT_SOLVED);
      if (step % 90 == 0) {
        double[] tracked = equations.evaluation().variables.clone();
        compareWithCold(tracked, step);
        System.arraycopy(tracked, 0, equations.evaluation().variables, 0, tracked.length);
        equations.evaluate();
      }
    }
  }

  private static void compareWithCold(double[] tracked, int step) {
    Equations fresh = twin();
    fresh.setConditions(at(step));
    new SteadySolver(fresh).solve();
    for (int i = 0; i < fresh.innerPoints(); i++) {
      int p = fresh.lnP(i);
      assertThat(tracked[p]).isCloseTo(fresh.evaluation().variables[p], within(1e-6));
    }
  }

  /** A jump over both handovers at once is bridged or found from nothing, and is the same state. */
  @Test
  void aJumpEndsWhereAColdStartDoes() {
    SteadySolver solver = new SteadySolver(equations);
    for (int step : new int[] {0, 990, 200, 700, 430, 470}) {
      equations.setConditions(at(step));
      assertThat(solver.solve()).isNotEqualTo(SteadySolver.Way.NOT_SOLVED);
      compareWithCold(equations.evaluation().variables.clone(), step);
    }
  }
}
