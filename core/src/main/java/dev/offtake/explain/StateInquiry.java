package dev.offtake.explain;

import dev.offtake.part.Part;
import dev.offtake.part.Role;
import dev.offtake.quantity.Style;
import dev.offtake.solve.Settler;
import dev.offtake.solve.Solution;
import dev.offtake.study.Course;
import dev.offtake.study.Handover;
import dev.offtake.study.NextChange;
import dev.offtake.system.BleedSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;

/**
 * From a question to its answer: solves, looks ahead along the power, explains, and does so twice
 * where nobody said which speed the engine holds.
 */
public final class StateInquiry {
  /** Changes are looked for up to this core speed. */
  private static final double FULL = 1.05;

  private StateInquiry() {}

  /**
   * What lies ahead as power comes up.
   *
   * @param next the next change of any part
   * @param handovers the first handover of each side
   */
  record Ahead(NextChange.Search next, List<Handover.Event> handovers) {}

  /**
   * Answers a question.
   *
   * @param question what is asked
   * @param style units to speak in
   */
  public static StateAnswer answer(Question question, Style style) {
    StateAnswer answer = one(question, style);
    return question
        .atCorrectedSpeed()
        .map(corrected -> answer.with(one(corrected, style)))
        .orElse(answer);
  }

  private static StateAnswer one(Question question, Style style) {
    BleedSystem system = question.system();
    CompletableFuture<Optional<Ahead>> ahead =
        CompletableFuture.supplyAsync(() -> ahead(system, question));
    Solution solution = new Settler(question.network()).solve(question.setup());
    Asked asked = question.asked(style);
    if (!solution.solved()) {
      return StateExplainer.withoutAnswer(asked, solution);
    }
    return StateExplainer.explain(asked, solution, ahead::join, style);
  }

  /**
   * Nothing lies ahead of a system whose air does not come from an engine. Looked for with a solver
   * of its own, beside the answer; both searches go the same way and share its states.
   */
  private static Optional<Ahead> ahead(BleedSystem system, Question question) {
    if (system.parts().stream().noneMatch(part -> part.kind().endsWith(" tap"))) {
      return Optional.empty();
    }
    double until = Math.max(FULL, question.setup().conditions().core());
    Course course =
        new Course(new Settler(question.network()), question.setup(), question.fanLine());
    return Optional.of(
        new Ahead(NextChange.find(course, until), Handover.find(course, groups(system), until)));
  }

  /** Sources that feed the same users: those of each side. */
  private static List<List<String>> groups(BleedSystem system) {
    List<List<String>> groups = new ArrayList<>();
    for (String side : system.sides().isEmpty() ? List.of("") : system.sides()) {
      groups.add(
          system.network().parts().stream()
              .filter(part -> feeds(part, side))
              .map(Part::name)
              .toList());
    }
    return groups;
  }

  /** Whether a part is a source for the users of a side; a fan's air only cools. */
  static boolean feeds(Part part, String side) {
    boolean here = side.isEmpty() || part.name().startsWith(side + " ");
    return part.role() == Role.SOURCE && here && !part.kind().equals("fan tap");
  }
}
