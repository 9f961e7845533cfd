package dev.offtake.desk;

import dev.offtake.explain.CurveAnswer;
import dev.offtake.quantity.Unit;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.annotations.AbstractXYAnnotation;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleEdge;

/**
 * Shades where a person could tell a broken system from the healthy one: a light tint where it is
 * plain, lines aslant where it is lost in the gauge, nothing where it is hidden, so that black and
 * white prints can be read.
 */
final class Shading extends AbstractXYAnnotation {
  static final String PLAIN = "plain";
  static final String LOST = "lost in the gauge";

  private static final long serialVersionUID = 1;

  /** Distance of the lines aslant. */
  private static final double APART = 7;

  private final transient List<CurveAnswer.Noticed> stretches;
  private final transient Unit unit;

  /**
   * The background of a panel.
   *
   * @param stretches by rising value
   * @param unit of the axis
   */
  Shading(List<CurveAnswer.Noticed> stretches, Unit unit) {
    this.stretches = stretches;
    this.unit = unit;
  }

  @Override
  public void draw(
      Graphics2D g,
      XYPlot plot,
      Rectangle2D data,
      ValueAxis domain,
      ValueAxis range,
      int renderer,
      PlotRenderingInfo info) {
    for (CurveAnswer.Noticed stretch : stretches) {
      fill(g, stretch.verdict(), box(stretch, unit, domain, data, data));
    }
  }

  /** The part of a strip that belongs to a stretch. */
  static Rectangle2D box(
      CurveAnswer.Noticed stretch, Unit unit, ValueAxis axis, Rectangle2D data, Rectangle2D strip) {
    double left = axis.valueToJava2D(unit.fromSi(stretch.from()), data, RectangleEdge.BOTTOM);
    double right = axis.valueToJava2D(unit.fromSi(stretch.to()), data, RectangleEdge.BOTTOM);
    return new Rectangle2D.Double(left, strip.getMinY(), right - left, strip.getHeight());
  }

  /** Fills a box as its verdict asks; a verdict without a shade leaves it as it is. */
  static void fill(Graphics2D g, String verdict, Rectangle2D box) {
    if (verdict.equals(PLAIN)) {
      g.setColor(Ink.PLAIN_SHADE);
      g.fill(box);
    } else if (verdict.equals(LOST)) {
      hatch(g, box);
    }
  }

  /** How a verdict is shown, behind its word. */
  static String words(String verdict) {
    return switch (verdict) {
      case PLAIN -> " (shaded)";
      case LOST -> " (hatched)";
      case "HIDDEN" -> " (white)";
      default -> "";
    };
  }

  /** Lines that rise to the right, each cut off at the edges of the box. */
  private static void hatch(Graphics2D g, Rectangle2D box) {
    g.setColor(Ink.HATCH);
    g.setStroke(Ink.thin());
    double w = box.getWidth();
    double h = box.getHeight();
    double first = APART * Math.ceil((box.getMinX() - box.getMaxY()) / APART);
    for (double c = first; c < box.getMinX() - box.getMaxY() + w + h; c += APART) {
      // On such a line x + (bottom - y) counts from the left edge; both ends stay inside.
      double along = c - (box.getMinX() - box.getMaxY()) - h;
      double x1 = Math.max(0, along);
      double x2 = Math.min(w, along + h);
      if (x2 > x1) {
        g.draw(
            new Line2D.Double(
                box.getMinX() + x1,
                box.getMaxY() - (x1 - along),
                box.getMinX() + x2,
                box.getMaxY() - (x2 - along)));
      }
    }
  }
}
