package dev.offtake.system;

import dev.offtake.quantity.Nearest;
import java.util.Collection;

/** Ends a message with what was probably meant. */
public final class Hint {
  /** Most words that are listed. */
  private static final int MOST = 12;

  private Hint() {}

  /** A sentence that names the nearest word, or all of them when they are few. */
  public static String of(String word, Collection<String> known) {
    String near = nearest(word, known);
    if (!near.isEmpty()) {
      return "Did you mean `" + near + "`?";
    }
    if (known.isEmpty()) {
      return "There are none to choose from";
    }
    int more = known.size() - MOST;
    String told = String.join(", ", known.stream().limit(MOST).toList());
    return "Known: " + told + (more > 0 ? ", and " + more + " more" : "");
  }

  /** The nearest word; empty when none is near. */
  public static String nearest(String word, Collection<String> known) {
    return Nearest.to(word, known).orElse("");
  }
}
