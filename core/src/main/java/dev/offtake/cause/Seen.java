package dev.offtake.cause;

import dev.offtake.quantity.Stated;
import java.util.Optional;

/**
 * What was seen of a part when somebody looked at it.
 *
 * @param part full name
 * @param words as written
 * @param verdict what the words say for certain
 * @param mode failure mode that the words name; empty when they name none
 * @param what what was measured, such as {@code gap}; empty when nothing was
 * @param measured the measure, SI; empty when nothing was measured
 */
public record Seen(
    String part,
    String words,
    Verdict verdict,
    String mode,
    String what,
    Optional<Stated> measured) {

  /** What an inspection says for certain. */
  public enum Verdict {
    /** The part is sound. */
    SOUND,
    /** It has the failure mode that is named. */
    FAULTY,
    /** Something is said that only a person can judge. */
    TO_JUDGE
  }
}
