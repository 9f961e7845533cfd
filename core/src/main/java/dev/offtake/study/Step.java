package dev.offtake.study;

import dev.offtake.solve.Solution;
import java.util.List;

/**
 * One state on the way along a sweep.
 *
 * @param x value of the quantity, SI
 * @param solution the state; where it is not solved it means nothing
 * @param states state of each subject; empty without an answer
 */
record Step(double x, Solution solution, List<String> states) {
  /** Keeps its list. */
  Step {
    states = List.copyOf(states);
  }

  boolean answered() {
    return solution.solved();
  }

  /** Why there is no answer, one sentence without a full stop; empty with one. */
  String trouble() {
    if (answered()) {
      return "";
    }
    if (!solution.refusals().isEmpty()) {
      var refusal = solution.refusals().entrySet().iterator().next();
      return refusal.getKey() + ": " + refusal.getValue();
    }
    List<String> cycle = solution.outcome().cycle();
    return cycle.isEmpty()
        ? "not solved; the place that resists is " + solution.outcome().resists()
        : "no state at rest; what goes to and fro: " + String.join(", ", cycle);
  }
}
