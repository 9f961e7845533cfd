package dev.offtake.system;

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
    String best = "";
    int least = 1 + Math.max(1, word.length() / 3);
    for (String candidate : known) {
      int distance = distance(word.toLowerCase(), candidate.toLowerCase());
      if (distance < least) {
        least = distance;
        best = candidate;
      }
    }
    return best;
  }

  private static int distance(String one, String two) {
    int[] row = new int[two.length() + 1];
    for (int j = 0; j < row.length; j++) {
      row[j] = j;
    }
    for (int i = 1; i <= one.length(); i++) {
      int corner = row[0];
      row[0] = i;
      for (int j = 1; j < row.length; j++) {
        int change = corner + (one.charAt(i - 1) == two.charAt(j - 1) ? 0 : 1);
        corner = row[j];
        row[j] = Math.min(change, 1 + Math.min(row[j], row[j - 1]));
      }
    }
    return row[two.length()];
  }
}
