package dev.offtake.desk;

import dev.offtake.explain.CurveAnswer;
import dev.offtake.explain.PairEvents;
import dev.offtake.study.Curve;
import dev.offtake.study.Feeders;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.ui.RectangleEdge;

/**
 * A strip for each side above the panels that says who feeds it where, and one that says who would
 * notice what is broken.
 */
final class FeedStrip {
  private final List<CurveAnswer> answers;
  private final Graphics2D g;

  FeedStrip(List<CurveAnswer> answers, Graphics2D g) {
    this.answers = answers;
    this.g = g;
  }

  /**
   * A strip.
   *
   * @param group number of the feeders
   * @param label what stands behind it
   */
  private record Strip(CurveAnswer answer, int group, String label) {}

  private static List<Strip> strips(List<CurveAnswer> answers) {
    List<Strip> strips = new ArrayList<>();
    for (int a = 0; a < answers.size(); a++) {
      boolean pair = a + 1 < answers.size() && answers.get(a + 1).broken();
      CurveAnswer healthy = answers.get(a);
      for (int group = 0; group < healthy.curve().feeders().size(); group++) {
        boolean both = pair && InCommon.sameFeeding(healthy, answers.get(a + 1), group);
        String name = healthy.name(answers);
        strips.add(strip(healthy, group, both ? InCommon.both(name) : name));
        if (pair && !both) {
          CurveAnswer now = answers.get(a + 1);
          strips.add(strip(now, group, now.name(answers)));
        }
      }
      a += pair ? 1 : 0;
    }
    return strips;
  }

  private static Strip strip(CurveAnswer answer, int group, String name) {
    String side = answer.curve().feeders().get(group).side();
    String fed = side.isEmpty() ? "fed by" : side + " fed by";
    return new Strip(answer, group, name.isEmpty() ? fed : fed + ", " + name);
  }

  /** Height of all strips. */
  static double height(List<CurveAnswer> answers, double strip) {
    long noticed = answers.stream().filter(CurveAnswer::broken).count();
    return (strips(answers).size() + noticed) * strip;
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
    for (Strip one : strips(answers)) {
      Rectangle2D box = new Rectangle2D.Double(data.getMinX(), y, data.getWidth(), strip - 4);
      segments(one.answer().curve(), one.group(), axis, data, box);
      frame(one.label(), box);
      y += strip;
    }
    for (CurveAnswer answer : answers) {
      if (answer.broken()) {
        Rectangle2D box = new Rectangle2D.Double(data.getMinX(), y, data.getWidth(), strip - 4);
        noticed(answer, axis, data, box);
        String day = answer.name(answers).replace(PairEvents.NOW, "");
        frame(day + "who would notice", box);
        y += strip;
      }
    }
  }

  private void frame(String label, Rectangle2D box) {
    g.setColor(Ink.TEXT);
    g.setFont(Ink.SMALL);
    g.drawString(label, (float) (box.getMaxX() + 15), (float) (box.getMinY() + 12));
    g.setStroke(Ink.thin());
    g.draw(box);
  }

  private void noticed(CurveAnswer answer, ValueAxis axis, Rectangle2D data, Rectangle2D box) {
    g.setFont(Ink.SMALL);
    FontMetrics metrics = g.getFontMetrics();
    for (CurveAnswer.Noticed stretch : answer.noticed()) {
      Rectangle2D own = Shading.box(stretch, answer.curve().sweep().unit(), axis, data, box);
      Shading.fill(g, stretch.verdict(), own);
      double width = metrics.stringWidth(stretch.verdict());
      if (width + 6 < own.getWidth()) {
        double x = own.getCenterX() - width / 2;
        if (stretch.verdict().equals(Shading.LOST)) {
          g.setColor(Ink.PAPER);
          g.fill(new Rectangle2D.Double(x - 3, own.getMinY(), width + 6, own.getHeight()));
        }
        g.setColor(Ink.TEXT);
        float base = (float) (own.getCenterY() + metrics.getAscent() / 2.0 - 1);
        g.drawString(stretch.verdict(), (float) x, base);
      }
      g.setColor(Ink.TEXT);
      g.setStroke(Ink.thin());
      g.draw(new Line2D.Double(own.getMaxX(), own.getMinY(), own.getMaxX(), own.getMaxY()));
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
