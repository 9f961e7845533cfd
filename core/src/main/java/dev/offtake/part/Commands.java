package dev.offtake.part;

import dev.offtake.logic.Condition;
import java.util.List;

/** Controls that follow from one condition in the file. */
final class Commands {
  private Commands() {}

  /**
   * A control that is 1 while a condition holds and 0 otherwise; always 1 when the file is silent.
   *
   * @param facts what the file says
   * @param key of the condition
   * @param name of the control
   */
  static Control onWhen(Facts facts, String key, String name) {
    Condition condition = facts.condition(key);
    if (condition == null) {
      return new Control(name, 1, List.of());
    }
    return new Control(
        name,
        0,
        List.of(
            new Control.Rule(condition, 1, condition.text()),
            new Control.Rule(null, 0, "not: " + condition.text())));
  }
}
