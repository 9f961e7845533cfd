package dev.offtake.desk;

import dev.offtake.explain.CurveAnswer;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Style;
import dev.offtake.quantity.Unit;
import dev.offtake.quantity.Units;
import dev.offtake.study.Column;
import dev.offtake.study.Curve;
import dev.offtake.study.Sweep;
import java.awt.BasicStroke;
import java.awt.Color;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** The panels of a picture: one for each dimension that is shown, above each other on one axis. */
final class CurvePanels {
  private final List<CurveAnswer> answers;
  private final Style style;
  private final Sweep sweep;
  private final List<Panel> panels = new ArrayList<>();

  /**
   * A panel.
   *
   * @param plot its axes and lines
   * @param labels what is written at the end of its lines
   */
  record Panel(XYPlot plot, List<Label> labels) {}

  /**
   * What is written at the end of a line.
   *
   * @param text name of the line
   * @param color of the line
   * @param stroke of the line
   * @param x where the line ends, in the unit of the axis
   * @param y likewise
   */
  record Label(String text, Color color, BasicStroke stroke, double x, double y) {}

  CurvePanels(List<CurveAnswer> answers, Style style) {
    this.answers = answers;
    this.style = style;
    sweep = answers.get(0).curve().sweep();
    Map<Dimension, List<Integer>> groups = new LinkedHashMap<>();
    List<Column> columns = answers.get(0).curve().columns();
    for (int i = 0; i < columns.size(); i++) {
      groups.computeIfAbsent(columns.get(i).dimension(), d -> new ArrayList<>()).add(i);
    }
    groups.forEach((dimension, own) -> panels.add(panel(dimension, own)));
  }

  List<Panel> panels() {
    return panels;
  }

  /** All panels on their common axis. */
  CombinedDomainXYPlot plot() {
    NumberAxis axis = axis(sweep.name(), sweep.unit().symbol());
    axis.setAutoRangeIncludesZero(false);
    axis.setRange(shown(sweep.from()), shown(sweep.to()));
    CombinedDomainXYPlot all = new CombinedDomainXYPlot(axis);
    all.setGap(14);
    all.setBackgroundPaint(Ink.PAPER);
    panels.forEach(panel -> all.add(panel.plot()));
    return all;
  }

  private double shown(double x) {
    return sweep.unit().fromSi(x);
  }

  private static NumberAxis axis(String name, String unit) {
    NumberAxis axis = new NumberAxis(unit.isEmpty() ? name : name + ", " + unit);
    axis.setLabelFont(Ink.BOLD);
    axis.setTickLabelFont(Ink.PLAIN);
    axis.setLabelPaint(Ink.TEXT);
    axis.setTickLabelPaint(Ink.TEXT);
    axis.setAxisLinePaint(Ink.TEXT);
    return axis;
  }

  private Panel panel(Dimension dimension, List<Integer> columns) {
    Unit unit = Units.find(style.unit(dimension), dimension).orElseThrow();
    NumberAxis range = axis(name(dimension), unit.symbol());
    range.setAutoRangeIncludesZero(dimension != Dimension.TEMPERATURE);
    XYSeriesCollection lines = new XYSeriesCollection();
    XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
    renderer.setDrawSeriesLineAsPath(true);
    List<Label> labels = new ArrayList<>();
    for (int a = 0; a < answers.size(); a++) {
      Curve curve = answers.get(a).curve();
      for (int k = 0; k < columns.size(); k++) {
        int column = columns.get(k);
        if (answers.get(a).broken()
            && InCommon.same(answers.get(a - 1), answers.get(a), column, style)) {
          continue;
        }
        int look = answers.size() == 1 ? k : a;
        XYSeries up = series(curve.up(), column, unit, lines.getSeriesCount());
        end(up, bare(curve.columns().get(column).name()) + name(a, column), k, look, labels);
        add(lines, renderer, up, k, Ink.dash(look));
        if (curve.remembers()) {
          XYSeries down = series(curve.down(), column, unit, lines.getSeriesCount());
          add(lines, renderer, down, k, Ink.down(answers.get(a).broken()));
        }
      }
    }
    shade(renderer);
    return new Panel(dress(new XYPlot(lines, null, range, renderer)), labels);
  }

  /** What follows the name of a line: the day, and whether it is healthy, broken or both. */
  private String name(int answer, int column) {
    String name = answers.get(answer).name(answers);
    boolean both =
        answer + 1 < answers.size()
            && answers.get(answer + 1).broken()
            && InCommon.same(answers.get(answer), answers.get(answer + 1), column, style);
    String told = both ? InCommon.both(name) : name;
    return told.isEmpty() ? "" : ", " + told;
  }

  /** Only one shading can be read: with several days their strips alone tell it. */
  private void shade(XYLineAndShapeRenderer renderer) {
    List<CurveAnswer> broken = answers.stream().filter(CurveAnswer::broken).toList();
    if (broken.size() == 1) {
      renderer.addAnnotation(new Shading(broken.get(0).noticed(), sweep.unit()), Layer.BACKGROUND);
    }
  }

  private static void add(
      XYSeriesCollection lines,
      XYLineAndShapeRenderer renderer,
      XYSeries series,
      int color,
      BasicStroke stroke) {
    int number = lines.getSeriesCount();
    lines.addSeries(series);
    renderer.setSeriesPaint(number, Ink.line(color));
    renderer.setSeriesStroke(number, stroke);
  }

  private XYSeries series(List<Curve.Row> rows, int column, Unit unit, int key) {
    XYSeries series = new XYSeries(key, false, true);
    for (Curve.Row row : rows) {
      double y = row.answered() ? unit.fromSi(row.values().get(column)) : Double.NaN;
      series.add(shown(row.x()), y);
    }
    return series;
  }

  private static void end(XYSeries series, String text, int color, int dash, List<Label> labels) {
    for (int i = series.getItemCount() - 1; i >= 0; i--) {
      double y = series.getY(i).doubleValue();
      if (!Double.isNaN(y)) {
        labels.add(
            new Label(text, Ink.line(color), Ink.dash(dash), series.getX(i).doubleValue(), y));
        return;
      }
    }
  }

  private XYPlot dress(XYPlot plot) {
    plot.setBackgroundPaint(Ink.PAPER);
    plot.setDomainGridlinePaint(Ink.GRID);
    plot.setRangeGridlinePaint(Ink.GRID);
    plot.setDomainGridlineStroke(Ink.thin());
    plot.setRangeGridlineStroke(Ink.thin());
    plot.setOutlinePaint(Ink.TEXT);
    for (CurveAnswer answer : answers) {
      for (Curve.Gap gap : answer.curve().gaps()) {
        plot.addDomainMarker(interval(gap.from(), gap.to(), Ink.NONE), Layer.BACKGROUND);
      }
    }
    return plot;
  }

  /**
   * Draws the events into all panels.
   *
   * @param bands whether to shade where they may be
   */
  void mark(List<EventKey.Entry> events, boolean bands) {
    for (Panel panel : panels) {
      XYPlot plot = panel.plot();
      for (EventKey.Entry event : bands ? events : List.<EventKey.Entry>of()) {
        plot.addDomainMarker(interval(event.low(), event.high(), Ink.BAND), Layer.BACKGROUND);
      }
      for (EventKey.Entry event : events) {
        ValueMarker line = new ValueMarker(shown(event.x()), Ink.FAINT, Ink.event());
        plot.addDomainMarker(line, Layer.BACKGROUND);
      }
    }
  }

  private IntervalMarker interval(double from, double to, Color color) {
    IntervalMarker marker = new IntervalMarker(shown(from), shown(to), color);
    marker.setAlpha(1);
    return marker;
  }

  private static String name(Dimension dimension) {
    return switch (dimension) {
      case GAUGE_PRESSURE -> "pressure";
      case MASS_FLOW -> "flow";
      case SHARE -> "opening";
      default -> dimension.words();
    };
  }

  /** A column without the word that its axis says already. */
  private static String bare(String column) {
    int last = column.lastIndexOf(' ');
    return last < 0 ? column : column.substring(0, last);
  }
}
