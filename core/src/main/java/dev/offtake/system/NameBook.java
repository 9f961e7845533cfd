package dev.offtake.system;

import java.util.Collection;
import java.util.List;

/**
 * Full names from short ones. A name is looked for on its own side first, then outside.
 *
 * <p>A full name is the side, a space, and the name within the side: {@code left duct}.
 */
final class NameBook {
  private NameBook() {}

  /** The full name of something that is declared on a side; an empty side is outside. */
  static String full(String side, String name) {
    return side.isEmpty() ? name : side + " " + name;
  }

  /** The full name that a short one means, or an empty text when nothing is known by it. */
  static String find(String side, String name, Collection<String> known) {
    String own = full(side, name);
    if (known.contains(own)) {
      return own;
    }
    return known.contains(name) ? name : "";
  }

  /** Names as they may be written on a side: its own ones short. */
  static List<String> asWritten(String side, Collection<String> known) {
    String prefix = side + " ";
    return known.stream()
        .map(name -> side.isEmpty() || !name.startsWith(prefix) ? name : name.substring(prefix.length()))
        .distinct()
        .toList();
  }
}
