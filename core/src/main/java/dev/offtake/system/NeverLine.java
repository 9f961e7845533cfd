package dev.offtake.system;

import dev.offtake.logic.Condition;
import java.util.Optional;

/**
 * Something that no check, run or procedure may ask for.
 *
 * @param text as written, without its source
 * @param condition the text as a condition; empty when a person must judge it
 * @param source where it is stated; empty when not said
 */
public record NeverLine(String text, Optional<Condition> condition, String source) {
  /** Whether the line is words that only a person can judge. */
  public boolean judgedByAPerson() {
    return condition.isEmpty();
  }
}
