package dev.offtake.measure.cases;

import java.util.List;

/**
 * What is shown on a run, without error.
 *
 * @param values by occasion and item of the schedule
 */
record Shown(List<double[]> values) {
  /** Keeps its list. */
  Shown {
    values = List.copyOf(values);
  }
}
