package dev.offtake.measure.cases;

import java.util.ArrayList;
import java.util.List;

/**
 * What went on at each stop of a run, and what was shown there without error.
 *
 * @param states in the order of the run, temperatures as far as they had settled
 * @param shown by the panel
 */
record Trace(List<State> states, Shown shown) {
  /** Keeps its list. */
  Trace {
    states = List.copyOf(states);
  }

  /**
   * Reads the panel of a plant on a run.
   *
   * @param rest the plant at rest at each stop
   */
  static Trace of(Schedule schedule, List<Running> runnings, List<State> rest, Knobs knobs) {
    List<State> states = new ArrayList<>();
    List<double[]> values = new ArrayList<>();
    double outside = runnings.get(0).outside().t();
    double[] before = {outside, outside};
    for (int i = 0; i < runnings.size(); i++) {
      State seen = rest.get(i).unsettled(before, runnings.get(i).unsettled());
      before = new double[] {seen.left().ductT(), seen.right().ductT()};
      states.add(seen);
      values.add(
          schedule.occasions().get(i).items().stream()
              .mapToDouble(item -> Panel.shows(item, seen, knobs))
              .toArray());
    }
    return new Trace(states, new Shown(values));
  }
}
