package dev.offtake.desk.page;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.offtake.explain.ChangeWords;
import dev.offtake.explain.CurveAnswer;
import dev.offtake.explain.Question;
import dev.offtake.explain.RibbonAnswer;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.Style;
import dev.offtake.quantity.Unit;
import dev.offtake.quantity.Units;
import dev.offtake.study.Column;
import dev.offtake.study.Curve;
import dev.offtake.study.Ribbon;
import dev.offtake.system.BleedSystem;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A curve with its ribbons, in the units of the reader, as the page is sent it. */
final class CurveDocument {
  /** Most things that one chart shows. */
  private static final int MOST = 8;

  private static final int MOST_POINTS = 200;
  private static final String CORE = "core";

  private final Style style;
  private final ObjectNode root = JsonNodeFactory.instance.objectNode();

  private CurveDocument(Style style) {
    this.style = style;
  }

  /**
   * What is asked of a curve.
   *
   * @param ask all that stands still
   * @param shown names of what is shown; none for what says most
   * @param over what is moved, with its range; {@code core} for the whole rail
   * @param points number of stops; 0 for the usual number
   */
  record Wanted(Ask ask, List<String> shown, String over, int points) {
    /** Reads what is wanted. */
    static Wanted of(Map<String, List<String>> query) {
      List<String> shown = Ask.all(query, "of");
      if (shown.size() > MOST || shown.stream().anyMatch(name -> name.contains(","))) {
        throw new Refusal(Refusal.BAD, "a chart shows up to " + MOST + " things", "name fewer");
      }
      return new Wanted(Ask.of(query), shown, Ask.one(query, "over"), points(query));
    }

    private static int points(Map<String, List<String>> query) {
      String text = Ask.one(query, "points");
      if (!text.isEmpty() && !text.matches("\\d{1,3}")) {
        throw new Refusal(Refusal.BAD, "points=" + text + " is no number of points", "say 50");
      }
      int points = text.isEmpty() ? 0 : Integer.parseInt(text);
      if (points > MOST_POINTS || points == 1) {
        throw new Refusal(Refusal.BAD, points + " points make no curve", "say 2 to " + MOST_POINTS);
      }
      return points;
    }

    /** As {@code offtake curve} is asked. */
    CurveAnswer.Request request(BleedSystem system) {
      List<String> names = shown.stream().map(name -> column(system, name)).toList();
      boolean rail = over.isEmpty() || over.equals(CORE);
      String range = rail ? Changes.over(system) : over;
      return new CurveAnswer.Request(range, points, String.join(",", names));
    }

    /** A point alone means its pressure. */
    private static String column(BleedSystem system, String name) {
      return system.network().point(name) >= 0 ? name + " pressure" : name;
    }
  }

  /** Answers a question. */
  static ObjectNode of(BleedSystem system, Wanted wanted) {
    Question question = wanted.ask().question(system);
    CurveAnswer.Request request = wanted.request(system);
    Style style = wanted.ask().style();
    try {
      List<CurveAnswer> all = CurveAnswer.all(question, request, style, share -> Work.goOn());
      Question sound = question.with(List.of());
      RibbonAnswer ribbons = RibbonAnswer.of(sound, request, share -> Work.goOn());
      return new CurveDocument(style).all(system, all, ribbons);
    } catch (QuantityProblem problem) {
      throw Refusal.of(problem);
    }
  }

  private ObjectNode all(BleedSystem system, List<CurveAnswer> all, RibbonAnswer ribbons) {
    Curve healthy = all.get(0).curve();
    @Nullable Curve broken =
        all.stream().filter(CurveAnswer::broken).map(CurveAnswer::curve).findFirst().orElse(null);
    Unit unit = healthy.sweep().unit();
    ObjectNode x = root.putObject("x").put("name", healthy.sweep().name());
    x.put("unit", unit.symbol());
    ArrayNode values = x.putArray("values");
    healthy.sweep().stops().forEach(stop -> values.add(unit.fromSi(stop)));
    ArrayNode series = root.putArray("series");
    ArrayNode limits = root.putArray("limits");
    for (int i = 0; i < healthy.columns().size(); i++) {
      series(series.addObject(), i, healthy, broken, ribbons);
      limits(limits, i, system, healthy.columns().get(i));
    }
    ArrayNode events = root.putArray("events");
    healthy.events().forEach(event -> event(events, event, unit, false));
    if (broken != null) {
      broken.events().forEach(event -> event(events, event, unit, true));
    }
    return root;
  }

  private void series(
      ObjectNode node, int column, Curve healthy, @Nullable Curve broken, RibbonAnswer ribbons) {
    Column shown = healthy.columns().get(column);
    List<Double> stops = healthy.sweep().stops();
    Unit unit = unit(shown.dimension());
    node.put("name", shown.name()).put("measures", shown.dimension().words());
    node.put("unit", unit.symbol());
    line(node.putArray("healthy"), stops, healthy.up(), column, unit);
    if (healthy.remembers()) {
      line(node.putArray("healthyDown"), stops, healthy.down(), column, unit);
    }
    ArrayNode low = node.putArray("low");
    ArrayNode high = node.putArray("high");
    for (int i = 0; i < stops.size(); i++) {
      Optional<Ribbon.Edges> edges = ribbons.at(i, column);
      number(low, edges.map(e -> unit.fromSi(e.low())).orElse(Double.NaN));
      number(high, edges.map(e -> unit.fromSi(e.high())).orElse(Double.NaN));
    }
    if (broken != null) {
      line(node.putArray("broken"), stops, broken.up(), column, unit);
      if (broken.remembers()) {
        line(node.putArray("brokenDown"), stops, broken.down(), column, unit);
      }
    }
  }

  private Unit unit(Dimension dimension) {
    return Units.find(style.unit(dimension), dimension).orElseThrow();
  }

  private static void line(
      ArrayNode array, List<Double> stops, List<Curve.Row> rows, int column, Unit unit) {
    Map<Double, Curve.Row> by = new HashMap<>();
    rows.forEach(row -> by.put(row.x(), row));
    for (double stop : stops) {
      Curve.@Nullable Row row = by.get(stop);
      double value =
          row != null && row.answered() ? unit.fromSi(row.values().get(column)) : Double.NaN;
      number(array, value);
    }
  }

  /** A hole in a line is null, so that the places of a list keep their meaning. */
  private static void number(ArrayNode array, double value) {
    if (Double.isFinite(value)) {
      array.add(Math.rint(value * 1e4) / 1e4);
    } else {
      array.addNull();
    }
  }

  private void limits(ArrayNode limits, int series, BleedSystem system, Column column) {
    for (Marks.Mark mark : Marks.of(system, column)) {
      Unit unit = unit(column.dimension());
      String says = mark.says() + " " + style.print(mark.value(), column.dimension());
      limits
          .addObject()
          .put("series", series)
          .put("value", unit.fromSi(mark.value()))
          .put("says", says);
    }
  }

  private static void event(ArrayNode events, Curve.Event event, Unit unit, boolean broken) {
    ObjectNode node = events.addObject();
    node.put("x", unit.fromSi(event.x())).put("low", unit.fromSi(event.low()));
    node.put("high", unit.fromSi(event.high())).put("says", ChangeWords.of(event));
    node.put("broken", broken).put("way", event.way().name().toLowerCase(java.util.Locale.ROOT));
    List<String> parts = new ArrayList<>();
    event.changes().forEach(change -> parts.add(change.subject()));
    parts.stream().filter(name -> !name.isEmpty()).forEach(node.putArray("parts")::add);
  }
}
