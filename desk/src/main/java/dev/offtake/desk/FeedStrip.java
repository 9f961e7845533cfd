package dev.offtake.desk;

import dev.offtake.explain.CurveAnswer;
import dev.offtake.study.Curve;
import dev.offtake.study.Feeders;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.ui.RectangleEdge;

/** A strip for each side above the panels that says who feeds it where. */
final class FeedStrip {
  private final List<CurveAnswer> answers;
  private final Graphics2D g;

  FeedStrip(List<CurveAnswer> answers, Graphics2D g) {
    this.answers = answers;
    this.g = g;
  }

  /** Height of all strips. */
  static double height(List<CurveAnswer> answers, double strip) {
    int strips = answers.stream().mapToInt(answer -> answer.curve().feeders().size()).sum();
    return strips * strip;
  }

  /**
   * Draws.
   *
   * @param axis of the quantity that moves
   * @param data area of the first panel
   * @param top upper edge of the first strip
   * @param strip height of one
   */
  void draw(ValueAxis axis, Rectangle2D data, double top, double strip) {
    double y = top;
    for (CurveAnswer answer : answers) {
      Curve curve = answer.curve();
      for (int group = 0; group < curve.feeders().size(); group++) {
        Feeders feeders = curve.feeders().get(group);
        String day = answers.size() == 1 ? "" : ", " + answer.dayName();
        String side = feeders.side().isEmpty() ? "fed by" : feeders.side() + " fed by";
        Rectangle2D box = new Rectangle2D.Double(data.getMinX(), y, data.getWidth(), strip - 4);
        segments(curve, group, axis, data, box);
        g.setColor(Ink.TEXT);
        g.setFont(Ink.SMALL);
        float base = (float) (y + strip / 2 + 2);
        g.drawString(side + day, (float) (data.getMaxX() + 15), base);
        g.setStroke(Ink.thin());
        g.draw(box);
        y += strip;
      }
    }
  }

  private void segments(Curve curve, int group, ValueAxis axis, Rectangle2D data, Rectangle2D box) {
    String now = "";
    double from = curve.sweep().from();
    double last = from;
    for (Curve.Row row : curve.up()) {
      String feeds = row.answered() ? words(curve.feeders().get(group), row, group) : "no answer";
      if (!feeds.equals(now)) {
        double edge = now.isEmpty() ? from : (last + row.x()) / 2;
        segment(now, curve, axis, data, box, from, edge);
        from = edge;
        now = feeds;
      }
      last = row.x();
    }
    segment(now, curve, axis, data, box, from, last);
  }

  private static String words(Feeders feeders, Curve.Row row, int group) {
    List<String> names =
        row.feeding().get(group).stream()
            .map(
                name ->
                    feeders.side().isEmpty() ? name : name.substring(feeders.side().length() + 1))
            .toList();
    return names.isEmpty() ? "none of its own" : String.join(" and ", names);
  }

  private void segment(
      String words,
      Curve curve,
      ValueAxis axis,
      Rectangle2D data,
      Rectangle2D box,
      double from,
      double to) {
    double left = axis.valueToJava2D(curve.sweep().unit().fromSi(from), data, RectangleEdge.BOTTOM);
    double right = axis.valueToJava2D(curve.sweep().unit().fromSi(to), data, RectangleEdge.BOTTOM);
    g.setFont(Ink.SMALL);
    FontMetrics metrics = g.getFontMetrics();
    g.setColor(Ink.TEXT);
    double width = metrics.stringWidth(words);
    if (width + 6 < right - left) {
      float x = (float) ((left + right - width) / 2);
      g.drawString(words, x, (float) (box.getCenterY() + metrics.getAscent() / 2.0 - 1));
    }
    if (!words.isEmpty()) {
      g.setStroke(Ink.thin());
      g.draw(new Line2D.Double(right, box.getMinY(), right, box.getMaxY()));
    }
  }
}
