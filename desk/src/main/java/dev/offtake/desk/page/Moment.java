package dev.offtake.desk.page;

import dev.offtake.explain.Glance;
import dev.offtake.explain.Question;
import dev.offtake.solve.Solution;
import org.jspecify.annotations.Nullable;

/**
 * A question with its state and what is told of it.
 *
 * @param question what was asked
 * @param solution what was found
 * @param glance what is told; null without an answer
 */
record Moment(Question question, Solution solution, @Nullable Glance glance) {
  /** Solves and tells. */
  static Moment of(States states, Ask ask) {
    Question question = ask.question(states.system());
    Solution solution = states.solve(question, Double.isNaN(ask.core()));
    Glance glance = solution.solved() ? Glance.of(question, solution, ask.style()) : null;
    return new Moment(question, solution, glance);
  }
}
