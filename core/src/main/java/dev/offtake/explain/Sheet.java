package dev.offtake.explain;

/** Lines of a given width that an answer is written on. */
final class Sheet {
  /** Column at which what a label says begins. */
  static final int LABEL = 14;

  private static final int NARROWEST = 60;

  private final int width;
  private final StringBuilder out = new StringBuilder();

  /** Takes an empty sheet of some columns, 60 or more. */
  Sheet(int width) {
    this.width = Math.max(NARROWEST, width);
  }

  int width() {
    return width;
  }

  /** A line, broken at blanks; those after the first begin at {@code hang}. */
  void line(String text, int indent, int hang) {
    out.append(Columns.wrap(text, width, indent, hang));
  }

  void blank() {
    out.append('\n');
  }

  /** A label with what it says; nothing when that is empty. */
  void labelled(String label, String says) {
    if (!says.isEmpty()) {
      line(pad(label, LABEL) + says, 0, LABEL);
    }
  }

  /**
   * Text with something short at the right of its last line.
   *
   * @param text broken at blanks so that it stays left of what is at the right
   * @param hang blanks before its further lines
   * @param right ends there
   * @param end column at which it ends
   */
  void right(String text, int hang, String right, int end) {
    String[] lines = Columns.wrap(text, end - right.length() - 2, 0, hang).split("\n", -1);
    for (int i = 0; i < lines.length - 2; i++) {
      out.append(lines[i]).append('\n');
    }
    String last = lines[lines.length - 2];
    out.append(pad(last, end - right.length())).append(right).append('\n');
  }

  /** Text with blanks after it up to some columns, one at least. */
  static String pad(String text, int columns) {
    return text.length() >= columns ? text + " " : text + " ".repeat(columns - text.length());
  }

  @Override
  public String toString() {
    return out.toString();
  }
}
