package dev.offtake.desk;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.util.List;

/**
 * Colours, dashes and letters of pictures. Colours are those of Okabe and Ito (Color Universal
 * Design, 2008), which colour-blind eyes tell apart; dashes tell lines apart in black and white.
 */
final class Ink {
  static final Color PAPER = Color.WHITE;
  static final Color TEXT = new Color(0x1D2226);
  static final Color FAINT = new Color(0x6B7075);
  static final Color GRID = new Color(0xD9D9D9);
  static final Color BAND = new Color(0xEDEDED);
  static final Color NONE = new Color(0xD0D0D0);

  /** Lets the lines of the grid through. */
  static final Color PLAIN_SHADE = new Color(0xE6, 0x9F, 0x00, 0x48);

  static final Color HATCH = new Color(0xB4B4B4);

  private static final List<Color> LINES =
      List.of(
          new Color(0x0072B2),
          new Color(0xD55E00),
          new Color(0x009E73),
          new Color(0xCC79A7),
          new Color(0x000000),
          new Color(0xE69F00),
          new Color(0x56B4E9));

  private static final float[][] DASHES = {
    {}, {9, 5}, {2, 3}, {12, 4, 2, 4}, {5, 3}, {14, 5}, {8, 3, 2, 3, 2, 3}
  };

  static final Font TITLE = new Font(Font.SANS_SERIF, Font.BOLD, 18);
  static final Font PLAIN = new Font(Font.SANS_SERIF, Font.PLAIN, 12);
  static final Font BOLD = new Font(Font.SANS_SERIF, Font.BOLD, 12);
  static final Font SMALL = new Font(Font.SANS_SERIF, Font.PLAIN, 10);
  static final Font MARK = new Font(Font.SANS_SERIF, Font.BOLD, 10);

  private Ink() {}

  /** Colour of a line by its number. */
  static Color line(int number) {
    return LINES.get(number % LINES.size());
  }

  /** Dashes of a line by its number; the first is drawn through. */
  static BasicStroke dash(int number) {
    float[] dash = DASHES[number % DASHES.length];
    return dash.length == 0 ? thick() : dashed(2, dash);
  }

  private static BasicStroke thick() {
    return new BasicStroke(2, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
  }

  /** Line of the way down; that of a broken system has its dots wider apart. */
  static BasicStroke down(boolean broken) {
    return dashed(1.2f, 1, broken ? 9 : 4);
  }

  /** Thin line at an event. */
  static BasicStroke event() {
    return dashed(0.8f, 3, 3);
  }

  static BasicStroke thin() {
    return new BasicStroke(0.8f);
  }

  private static BasicStroke dashed(float width, float... dash) {
    return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, dash, 0);
  }
}
