package dev.offtake.system;

/**
 * Characters that a text which people write does not hold, and that do harm where it is shown:
 * those that steer a terminal, and those that turn the direction of writing.
 */
final class Unprintable {
  private Unprintable() {}

  /** Place of the first such character; −1 when there is none. */
  static int in(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (is(text.charAt(i))) {
        return i;
      }
    }
    return -1;
  }

  /** A character by its number, as in {@code U+001B}. */
  static String name(char c) {
    return "U+%04X".formatted((int) c);
  }

  private static boolean is(char c) {
    boolean layout = c == '\n' || c == '\t';
    boolean turns = (c >= '\u202A' && c <= '\u202E') || (c >= '\u2066' && c <= '\u2069');
    return turns || (Character.isISOControl(c) && !layout);
  }
}
