package dev.offtake.explain;

import dev.offtake.part.Mode;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.Style;
import dev.offtake.solve.Settler;
import dev.offtake.solve.Solution;
import dev.offtake.study.Sign;
import dev.offtake.system.BleedSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * From a question about a broken system to its answer: solves it healthy and broken, here and at
 * every power of the file, and compares.
 */
public final class BreakInquiry {
  /** No more rows than this are shown of what changed. */
  private static final int ROWS = 14;

  private BreakInquiry() {}

  /**
   * Answers a question.
   *
   * @param question what is asked, with at least one fault in it
   * @param style units to speak in
   * @throws QuantityProblem when the question cannot be put at another power of the file
   */
  public static BreakAnswer answer(Question question, Style style) throws QuantityProblem {
    return answer(StateInquiry.answer(question, style), question, style);
  }

  /** The same with the broken state told already. */
  static BreakAnswer answer(StateAnswer state, Question question, Style style)
      throws QuantityProblem {
    Question healthy = question.with(List.of());
    Settler sound = new Settler(healthy.network());
    Settler broken = new Settler(question.network());
    AtPower here = at(AtPower.AS_ASKED, healthy, question, sound, broken);
    List<AtPower> powers = powers(question, healthy, sound, broken);
    boolean named = powers.stream().anyMatch(at -> same(at, here));
    List<AtPower> told = new ArrayList<>(named ? List.of() : List.of(here));
    told.addAll(powers);
    List<BreakAnswer.Noticed> noticed = BreakNotice.of(told, moving(question), style);
    List<BreakAnswer.Look> look =
        BreakLook.of(question.faults(), told, asItSits(healthy, sound), style);
    if (!here.solved()) {
      return new BreakAnswer(
          state,
          unsolved(here),
          state.headline(),
          List.of(),
          List.of(),
          0,
          List.of(),
          question.byHand(),
          noticed,
          look);
    }
    Compared compared = new Compared(here.healthy(), here.broken(), style);
    StateAnswer remembering = state.remembering(OtherState.of(here, broken, style));
    List<Sign> signs = here.signs();
    List<BreakAnswer.Changed> changed = BreakChanged.of(compared, signs);
    String headline = BreakHeadline.of(compared, question.faults(), signs);
    return new BreakAnswer(
        remembering,
        headline,
        BreakHeadline.beside(headline, state.headline(), signs),
        BreakSteps.of(compared, question.faults(), signs),
        changed.subList(0, Math.min(ROWS, changed.size())),
        Math.max(0, changed.size() - ROWS),
        BreakBack.of(compared, signs),
        question.byHand(),
        noticed,
        look);
  }

  /** Whether something broken shows only while power moves. */
  static boolean moving(Question question) {
    return question.faults().stream()
        .anyMatch(fault -> fault.mode().traits().contains(Mode.Trait.MOVING));
  }

  /** Why nothing can be compared; nothing more to say where the broken state tells it itself. */
  private static String unsolved(AtPower here) {
    return here.broken().solved()
        ? "The healthy system has no answer here, so that nothing can be compared."
        : "With this fault there is no answer here.";
  }

  private static boolean same(AtPower one, AtPower two) {
    return one.healthy().setup().equals(two.healthy().setup());
  }

  private static List<AtPower> powers(
      Question question, Question healthy, Settler sound, Settler broken) throws QuantityProblem {
    BleedSystem system = question.system();
    List<AtPower> powers = new ArrayList<>();
    for (String name : system.settings().keySet()) {
      powers.add(at(name, healthy.at(name), question.at(name), sound, broken));
    }
    return powers;
  }

  /** Healthy states without what was set by hand; none where nothing was. */
  private static List<Solution> asItSits(Question healthy, Settler sound) throws QuantityProblem {
    List<Solution> states = new ArrayList<>();
    Set<String> names = healthy.system().settings().keySet();
    for (String name : healthy.byHand().isEmpty() ? Set.<String>of() : names) {
      sound.forget();
      states.add(sound.solve(Question.of(healthy.system(), name, "", "", List.of()).setup()));
    }
    return states;
  }

  private static AtPower at(
      String name, Question healthy, Question question, Settler sound, Settler broken) {
    // Each state with fresh memory and a fresh start, so that its order in the list does not count.
    sound.forget();
    broken.forget();
    Solution one = sound.solve(healthy.setup());
    Solution two = broken.solve(question.setup());
    return new AtPower(name, one, two);
  }
}
