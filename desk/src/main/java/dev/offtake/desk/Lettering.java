package dev.offtake.desk;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.List;

/** Writes lines of text into a picture, broken at blanks. */
final class Lettering {
  private static final int LEADING = 4;

  private final Graphics2D g;

  Lettering(Graphics2D g) {
    this.g = g;
  }

  /**
   * Writes.
   *
   * @param text one paragraph
   * @param x left edge
   * @param y upper edge
   * @param width where it is broken
   * @return lower edge
   */
  double write(String text, Font font, Color color, double x, double y, double width) {
    g.setFont(font);
    g.setColor(color);
    FontMetrics metrics = g.getFontMetrics(font);
    double at = y;
    for (String line : broken(text, metrics, width)) {
      g.drawString(line, (float) x, (float) (at + metrics.getAscent()));
      at += metrics.getAscent() + metrics.getDescent() + LEADING;
    }
    return at;
  }

  /** Draws a level line. */
  void line(double from, double to, double y, BasicStroke stroke) {
    g.setColor(Ink.TEXT);
    g.setStroke(stroke);
    g.draw(new Line2D.Double(from, y, to, y));
  }

  /** Height that a paragraph takes. */
  double height(String text, Font font, double width) {
    FontMetrics metrics = g.getFontMetrics(font);
    int lines = broken(text, metrics, width).size();
    return lines * (double) (metrics.getAscent() + metrics.getDescent() + LEADING);
  }

  private static List<String> broken(String text, FontMetrics metrics, double width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.split(" ", -1)) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (!line.isEmpty() && metrics.stringWidth(longer) > width) {
        lines.add(line.toString());
        line.setLength(0);
        line.append(word);
      } else {
        line.setLength(0);
        line.append(longer);
      }
    }
    lines.add(line.toString());
    return lines;
  }
}
