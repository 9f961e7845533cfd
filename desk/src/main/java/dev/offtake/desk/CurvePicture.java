package dev.offtake.desk;

import dev.offtake.explain.Axis;
import dev.offtake.explain.ChangeWords;
import dev.offtake.explain.CurveAnswer;
import dev.offtake.explain.CurveText;
import dev.offtake.explain.PairEvents;
import dev.offtake.explain.StateAnswer;
import dev.offtake.quantity.Style;
import dev.offtake.study.Curve;
import dev.offtake.study.Sweep;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jfree.chart.ChartRenderingInfo;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.text.TextUtils;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;

/**
 * A picture of curves that can be put into a manual: what was asked on top, who feeds, panels on
 * one axis with a name at the end of each line, numbered events with a key, sources and caution at
 * the foot.
 */
final class CurvePicture {
  static final int WIDTH = 1000;

  private static final double MARGIN = 28;

  /** From a panel to the sample of a line beside its name, and to the end of that sample. */
  private static final double LEAD = 14;

  private static final double SAMPLE = 44;

  /** Half a number below an axis, which stands out at its end. */
  private static final double TICK = 16;

  private static final double PANEL = 230;
  private static final double MARK = 8;
  private static final double STRIP = 20;
  private static final double FIRST_MARK = 5;

  private final List<CurveAnswer> answers;
  private final CurvePanels panels;
  private final EventKey key;
  private final Sweep sweep;
  private final boolean compares;

  CurvePicture(List<CurveAnswer> answers, Style style) {
    this.answers = answers;
    panels = new CurvePanels(answers, style);
    key = new EventKey(answers);
    compares = answers.stream().anyMatch(CurveAnswer::broken);
    // Two shadings in one panel cannot be told apart: the key gives the tolerances.
    panels.mark(key.entries(), !compares);
    sweep = answers.get(0).curve().sweep();
  }

  /** Height that the picture needs, in its own units. */
  int height() {
    Graphics2D g = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics();
    try {
      return (int) Math.ceil(paint(g, false));
    } finally {
      g.dispose();
    }
  }

  /** Draws the picture. */
  void draw(Graphics2D g) {
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    paint(g, true);
  }

  /** Goes through the picture from top to bottom; returns the lower edge. */
  private double paint(Graphics2D g, boolean ink) {
    Page page = new Page(g, ink);
    CurveAnswer first = answers.get(0);
    double y = page.text(first.asked().title(), Ink.TITLE, Ink.TEXT, MARGIN);
    for (CurveAnswer answer : answers) {
      y = answer.broken() ? y : page.text(answer.conditions(), Ink.PLAIN, Ink.TEXT, y);
    }
    if (!first.asked().about().isEmpty()) {
      y = page.text(first.asked().about(), Ink.BOLD, Ink.TEXT, y);
    }
    for (int i = 0; compares && i < answers.size(); i++) {
      y = page.sample(i, y + (i == 0 ? 4 : 0));
    }
    y = chart(g, ink, y + 6);
    y = page.key(y + 10);
    y = page.text("Stands on " + first.asked().standsOn() + ".", Ink.SMALL, Ink.FAINT, y + 6);
    return page.text(StateAnswer.CAUTION, Ink.SMALL, Ink.FAINT, y) + MARGIN / 2;
  }

  private double chart(Graphics2D g, boolean ink, double top) {
    double strips = FeedStrip.height(answers, STRIP);
    double marks = 3 * 2 * MARK + 6;
    double y = top + strips + marks;
    double height = PANEL * panels.panels().size() + 46;
    if (ink) {
      // Else the names of upright axes would be outlines in an SVG, which nobody can search.
      TextUtils.setUseDrawRotatedStringWorkaround(false);
      JFreeChart chart = new JFreeChart(null, null, panels.plot(), false);
      chart.setBackgroundPaint(Ink.PAPER);
      chart.setPadding(new RectangleInsets(0, 0, 0, TICK));
      ChartRenderingInfo info = new ChartRenderingInfo();
      Rectangle2D area =
          new Rectangle2D.Double(MARGIN / 2, y, WIDTH - MARGIN - names(g) + TICK, height);
      chart.draw(g, area, info);
      CombinedDomainXYPlot plot = (CombinedDomainXYPlot) chart.getPlot();
      ValueAxis axis = plot.getDomainAxis();
      for (int i = 0; i < panels.panels().size(); i++) {
        Rectangle2D data = info.getPlotInfo().getSubplotInfo(i).getDataArea();
        names(g, panels.panels().get(i), axis, data);
        if (i == 0) {
          marks(g, axis, data);
          new FeedStrip(answers, g).draw(axis, data, top, STRIP);
        }
      }
    }
    return y + height;
  }

  /** Room that the names at the ends of lines need. */
  private double names(Graphics2D g) {
    FontMetrics metrics = g.getFontMetrics(Ink.PLAIN);
    double widest = 0;
    for (CurvePanels.Panel panel : panels.panels()) {
      for (CurvePanels.Label label : panel.labels()) {
        widest = Math.max(widest, metrics.stringWidth(label.text()));
      }
    }
    return SAMPLE + 5 + widest;
  }

  /** Writes the names at the ends of lines, moved apart where they would cover each other. */
  private static void names(
      Graphics2D g, CurvePanels.Panel panel, ValueAxis axis, Rectangle2D data) {
    g.setFont(Ink.PLAIN);
    FontMetrics metrics = g.getFontMetrics();
    double line = metrics.getHeight();
    List<CurvePanels.Label> labels = new ArrayList<>(panel.labels());
    labels.sort(Comparator.comparingDouble((CurvePanels.Label l) -> -l.y()));
    double least = data.getMinY() + line / 2;
    double free = data.getMaxY() - line / 2;
    for (int i = 0; i < labels.size(); i++) {
      CurvePanels.Label label = labels.get(i);
      double end = panel.plot().getRangeAxis().valueToJava2D(label.y(), data, RectangleEdge.LEFT);
      double x = axis.valueToJava2D(label.x(), data, RectangleEdge.BOTTOM);
      double room = free - (labels.size() - 1 - i) * line;
      double y = Math.min(room, Math.max(least, end));
      least = y + line;
      g.setColor(label.color());
      g.setStroke(Ink.thin());
      g.draw(new Line2D.Double(x, end, data.getMaxX() + LEAD, y));
      g.setStroke(label.stroke());
      g.draw(new Line2D.Double(data.getMaxX() + LEAD, y, data.getMaxX() + SAMPLE, y));
      g.drawString(label.text(), (float) (data.getMaxX() + SAMPLE + 5), (float) (y + line / 3));
    }
  }

  /** Draws the numbers of the events above the first panel, in rows where they are close. */
  private void marks(Graphics2D g, ValueAxis axis, Rectangle2D data) {
    g.setFont(Ink.MARK);
    FontMetrics metrics = g.getFontMetrics();
    double[] taken = {-1e9, -1e9, -1e9};
    List<EventKey.Entry> entries = new ArrayList<>(key.entries());
    entries.sort(Comparator.comparingDouble(EventKey.Entry::x));
    for (EventKey.Entry entry : entries) {
      double x = axis.valueToJava2D(sweep.unit().fromSi(entry.x()), data, RectangleEdge.BOTTOM);
      int row = 0;
      while (row < taken.length - 1 && x - taken[row] < 2 * MARK + 2) {
        row++;
      }
      taken[row] = x;
      double y = data.getMinY() - FIRST_MARK - MARK - row * 2 * MARK;
      g.setColor(Ink.FAINT);
      g.setStroke(Ink.event());
      g.draw(new Line2D.Double(x, y + MARK, x, data.getMinY()));
      g.setColor(Ink.TEXT);
      g.fill(new Ellipse2D.Double(x - MARK, y - MARK, 2 * MARK, 2 * MARK));
      g.setColor(Ink.PAPER);
      float left = (float) (x - metrics.stringWidth(entry.mark()) / 2.0);
      g.drawString(entry.mark(), left, (float) (y + metrics.getAscent() / 2.0 - 1));
    }
  }

  /** What the key says besides the events. */
  private List<String> remarks() {
    List<String> remarks = new ArrayList<>();
    if (!compares && key.entries().stream().anyMatch(entry -> entry.high() > entry.low())) {
      remarks.add(
          banded()
              ? "Grey: where tolerances, and the curves of taps between their points, may put an"
                  + " event."
              : "Grey: from the first to the last of the events that share a number.");
    }
    Map<String, String> whose = new LinkedHashMap<>();
    for (CurveAnswer answer : answers) {
      String name = answer.name(answers);
      for (String says : remarks(answer)) {
        whose.merge(says, name, (healthy, now) -> InCommon.both(healthy));
      }
    }
    whose.forEach((says, name) -> remarks.add(name.isEmpty() ? says : name + ": " + says));
    if (remembers()) {
      remarks.add(
          compares
              ? "Dotted: the way down; with dots wider apart: the way down now."
              : "Dotted: the way down.");
    }
    return remarks;
  }

  /** Whether bands of the parts may put an event elsewhere; in the course of time none does. */
  private boolean banded() {
    return answers.stream()
        .flatMap(answer -> answer.curve().events().stream())
        .anyMatch(event -> event.high() > event.low());
  }

  private boolean remembers() {
    return answers.stream().anyMatch(answer -> answer.curve().remembers());
  }

  private static List<String> remarks(CurveAnswer answer) {
    List<String> remarks = new ArrayList<>();
    Axis axis = Axis.of(answer.curve().sweep());
    for (Curve.Event event : answer.curve().events()) {
      if (event.changes().get(0).what() == Curve.What.TABLE) {
        remarks.add("at " + axis.print(event.x()) + " " + ChangeWords.of(event) + ".");
      }
    }
    for (Curve.Gap gap : answer.curve().gaps()) {
      remarks.add("no answer at " + CurveText.where(axis, gap) + ": " + gap.why() + ".");
    }
    return remarks;
  }

  /** Who would notice, stretch by stretch, with the shade of each. */
  private List<String> noticed() {
    List<String> says = new ArrayList<>();
    Axis axis = Axis.of(sweep);
    for (CurveAnswer answer : answers) {
      String name = answer.name(answers).replace(PairEvents.NOW, "");
      for (CurveAnswer.Noticed stretch : answer.noticed()) {
        String verdict = stretch.verdict() + Shading.words(stretch.verdict());
        says.add(name + stretch.where(axis) + ": " + verdict + "; " + stretch.told(axis));
      }
    }
    return says;
  }

  /** Text above and below the chart; without ink it only measures. */
  private final class Page {
    private static final double MARK_COLUMN = 26;

    private final Lettering letters;
    private final boolean ink;

    Page(Graphics2D g, boolean ink) {
      this.ink = ink;
      letters = new Lettering(g);
    }

    /** How a curve is drawn, and what it is. */
    double sample(int answer, double y) {
      CurveAnswer own = answers.get(answer);
      String broken = String.join(", ", own.asked().broken());
      String says = own.name(answers) + (broken.isEmpty() ? "" : ": " + broken);
      double below = text(says, Ink.BOLD, Ink.TEXT, MARGIN + SAMPLE + 8, y);
      if (ink) {
        letters.line(MARGIN, MARGIN + SAMPLE, y + Ink.BOLD.getSize() / 2.0 + 1, Ink.dash(answer));
      }
      return below;
    }

    double text(String text, Font font, Color color, double y) {
      return text(text, font, color, MARGIN, y);
    }

    private double text(String text, Font font, Color color, double x, double y) {
      double width = WIDTH - MARGIN - x;
      return ink
          ? letters.write(text, font, color, x, y, width)
          : y + letters.height(text, font, width);
    }

    double key(double y) {
      double at = y;
      for (EventKey.Entry entry : key.entries()) {
        if (ink) {
          letters.write(entry.mark(), Ink.BOLD, Ink.TEXT, MARGIN, at, WIDTH);
        }
        at = text(entry.says(), Ink.PLAIN, Ink.TEXT, MARGIN + MARK_COLUMN, at);
      }
      for (String remark : remarks()) {
        at = text(remark, Ink.PLAIN, Ink.TEXT, MARGIN + MARK_COLUMN, at);
      }
      if (compares) {
        at =
            text(
                remembers() ? "Who would notice, on the way up" : "Who would notice",
                Ink.BOLD,
                Ink.TEXT,
                MARGIN,
                at + 4);
      }
      for (String says : noticed()) {
        at = text(says, Ink.PLAIN, Ink.TEXT, MARGIN + MARK_COLUMN, at);
      }
      return at;
    }
  }
}
