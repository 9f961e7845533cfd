package dev.offtake.solve;

import dev.offtake.explain.Question;
import dev.offtake.network.Demos;
import dev.offtake.part.Doing;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.Style;
import dev.offtake.system.BleedSystem;
import java.util.List;

/** Asks a system and reads the answer by names and in the shop's units. */
final class Answers {
  static final double PSI = 6894.757293168361;
  static final double LB_MIN = 0.45359237 / 60;
  static final double AMBIENT_P = 101325;
  static final double AMBIENT_T = 288.15;

  final Solution solution;

  private Answers(Solution solution) {
    this.solution = solution;
  }

  static Answers of(Solution solution) {
    return new Answers(solution);
  }

  static Answers ask(String text, String... sets) {
    return ask(Demos.text(text), "80 %", sets);
  }

  static Answers ask(BleedSystem system, String power, String... sets) {
    return of(new Settler(system.network()).solve(setup(system, power, sets)));
  }

  static Setup setup(BleedSystem system, String power, String... sets) {
    try {
      return Question.of(system, power, "", "", List.of(sets)).setup();
    } catch (QuantityProblem wrong) {
      throw new IllegalArgumentException(wrong);
    }
  }

  double psig(String point) {
    return (solution.pressure(solution.network().point(point)) - AMBIENT_P) / PSI;
  }

  double kelvin(String point) {
    return solution.temperature(solution.network().point(point));
  }

  /** Flow of a part's only leg, lb/min. */
  double flow(String part) {
    return solution.flow(solution.network().part(part), 0) / LB_MIN;
  }

  Doing doing(String part) {
    return solution.doing(solution.network().part(part), Style.SHOP);
  }
}
