package dev.offtake.desk.page;

import dev.offtake.explain.Glance;
import dev.offtake.explain.Question;
import dev.offtake.quantity.Style;
import dev.offtake.solve.Solution;
import org.jspecify.annotations.Nullable;

/**
 * A question with its state and what is told of it.
 *
 * @param question what was asked
 * @param solution what was found
 * @param glance what is told; null without an answer
 * @param style units of it
 */
record Moment(Question question, Solution solution, @Nullable Glance glance, Style style) {
  /** Solves and tells. */
  static Moment of(States states, Ask ask) {
    Question question = ask.question(states.system());
    Solution solution = states.solve(question, Double.isNaN(ask.core()));
    return of(question, solution, ask.style());
  }

  /** Tells what was solved elsewhere. */
  static Moment of(Question question, Solution solution, Style style) {
    Glance glance = solution.solved() ? Glance.of(question, solution, style) : null;
    return new Moment(question, solution, glance, style);
  }

  /** The sentence that stands above all others; without an answer why there is none. */
  String says() {
    return glance == null ? Glance.trouble(solution) : glance.lead();
  }
}
