package dev.offtake.part;

import dev.offtake.logic.Condition;
import dev.offtake.logic.Situation;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A discrete input of a part: what switches, trips, electrical power, locks or the part's own
 * memory make of it.
 *
 * @param name within the part
 * @param initial value before anything is decided
 * @param rules first rule whose condition holds gives the value; empty for memory, which the
 *     element itself changes
 */
public record Control(String name, double initial, List<Rule> rules) {
  /** Keeps its rules. */
  public Control {
    rules = List.copyOf(rules);
  }

  /** A control that only the part's own memory changes. */
  public static Control memory(String name, double initial) {
    return new Control(name, initial, List.of());
  }

  /**
   * A value and when it holds.
   *
   * @param when condition; null when it always holds
   * @param value of the control
   * @param why words for the explanation, such as {@code bleed switch is OFF}
   */
  public record Rule(@Nullable Condition when, double value, String why) {
    /** Whether it gives the value in a situation. */
    public boolean holds(Situation situation) {
      return when == null || when.holds(situation);
    }

    /** The words; of a condition that tells itself only the clauses that hold. */
    public String because(Situation situation) {
      return when != null && why.equals(when.text()) ? when.because(situation).orElse(why) : why;
    }
  }
}
