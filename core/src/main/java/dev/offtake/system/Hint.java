package dev.offtake.system;

import dev.offtake.quantity.Nearest;
import java.util.Collection;

/** Ends a message with what was probably meant. */
final class Hint {
  private Hint() {}

  /** A sentence that names the nearest word, or all of them when they are few. */
  static String of(String word, Collection<String> known) {
    String near = nearest(word, known);
    if (!near.isEmpty()) {
      return "Did you mean `" + near + "`?";
    }
    if (known.isEmpty()) {
      return "There are none to choose from";
    }
    return "Known: " + String.join(", ", known.stream().limit(12).toList());
  }

  /** The nearest word; empty when none is near. */
  static String nearest(String word, Collection<String> known) {
    return Nearest.to(word, known).orElse("");
  }
}
