package dev.offtake.desk.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * How wide words are in Atkinson Hyperlegible Next at medium weight and numbers in its Mono, so
 * that room can be kept for them. Advances are those of the fonts' own tables, in hundredths of the
 * size, as a browser measures them at 100 px.
 */
final class Face {
  /** Size of names, px. */
  static final double NAME = 15;

  /** Size of what a place does or shows, px. */
  static final double VALUE = 14;

  /** Size of the words at a mark and of healthy values, px. */
  static final double SMALL = 12.5;

  /** Height of a line of names, px. */
  static final double LINE = 17;

  private static final double MONO = 0.632;
  private static final int WIDEST = 94;

  /** Characters by advance: each text's characters are as wide as the number before it. */
  private static final int[] ADVANCES = {
    23, 25, 28, 31, 35, 37, 42, 48, 50, 52, 54, 55, 57, 59, 61, 63, 65, 68, 70, 73, 78, 87, 94
  };

  private static final String[] CHARACTERS = {
    "',.:;|",
    "j`",
    "il !",
    "()[f",
    "\"]tr{}",
    "-_",
    "I/\\1",
    "*yz",
    "csvx",
    "?7k",
    "JLa",
    "eu~",
    "2<>F^hnog",
    "9ETbdpq3",
    "$+5SY6PVZ",
    "48=BR",
    "K0ACX",
    "DU",
    "#GHNw",
    "&OQ",
    "@",
    "Mm",
    "W%"
  };

  private static final double[] WIDTHS = widths();

  private Face() {}

  private static double[] widths() {
    double[] widths = new double[128];
    Arrays.fill(widths, WIDEST);
    for (int i = 0; i < ADVANCES.length; i++) {
      for (char c : CHARACTERS[i].toCharArray()) {
        widths[c] = ADVANCES[i];
      }
    }
    return widths;
  }

  /** Width of words, px; what is no ASCII counts as the widest letter. */
  static double words(String text, double size) {
    double width = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      width += c < 128 ? WIDTHS[c] : WIDEST;
    }
    return width * size / 100;
  }

  /** Width of a number, px. */
  static double numbers(String text, double size) {
    return text.length() * MONO * size;
  }

  /** Breaks a name into lines that are no wider than asked where its words allow it, px. */
  static List<String> wrap(String text, double size, double most) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : text.split(" ", -1)) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (!line.isEmpty() && words(longer, size) > most) {
        lines.add(line);
        line = word;
      } else {
        line = longer;
      }
    }
    lines.add(line);
    return lines;
  }

  /** Width of the widest line, px. */
  static double widest(List<String> lines, double size) {
    return lines.stream().mapToDouble(line -> words(line, size)).max().orElse(0);
  }
}
