package dev.offtake.explain;

/** Breaks lines at blanks. */
public final class Columns {
  private Columns() {}

  /**
   * Breaks a line; blanks inside it are kept where it does not break.
   *
   * @param text one line
   * @param width columns
   * @param indent blanks before the first line
   * @param hang blanks before the following lines
   */
  public static String wrap(String text, int width, int indent, int hang) {
    StringBuilder out = new StringBuilder();
    String rest = " ".repeat(indent) + text.stripTrailing();
    String margin = " ".repeat(Math.min(hang, 2 * width / 3));
    while (rest.length() > width) {
      int cut = rest.lastIndexOf(' ', width);
      if (cut <= margin.length()) {
        cut = rest.indexOf(' ', width);
      }
      if (cut < 0) {
        break;
      }
      out.append(rest.substring(0, cut).stripTrailing()).append('\n');
      rest = margin + rest.substring(cut + 1).stripLeading();
    }
    return out.append(rest).append('\n').toString();
  }
}
