package dev.offtake.explain;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.offtake.study.Column;
import dev.offtake.study.Curve;
import dev.offtake.study.Feeders;
import java.util.List;
import java.util.Locale;

/** Curves as JSON, SI inside, its layout numbered by {@code offtake curve}. */
public final class CurveJson {
  /** Number of the layout; raised when a field changes its meaning or goes. */
  public static final int LAYOUT = 1;

  private static final ObjectMapper MAPPER = new ObjectMapper();

  private CurveJson() {}

  /**
   * Makes the document.
   *
   * @param answers one or more of the same system over the same quantity, a broken one after its
   *     healthy one
   */
  public static String print(List<CurveAnswer> answers) {
    Asked asked = answers.get(0).asked();
    ObjectNode root = MAPPER.createObjectNode();
    root.put("offtake curve", LAYOUT);
    root.put("title", asked.title());
    root.put("line-up", asked.lineUp());
    asked.warnings().forEach(root.putArray("notes")::add);
    ArrayNode curves = root.putArray("curves");
    answers.forEach(answer -> curve(curves.addObject(), answer));
    root.put("stands on", asked.standsOn());
    root.put("caution", StateAnswer.CAUTION);
    return root.toPrettyString();
  }

  private static void curve(ObjectNode node, CurveAnswer answer) {
    Curve curve = answer.curve();
    node.put("power", answer.power());
    node.put("day", answer.day());
    answer.asked().broken().forEach(node.putArray("if")::add);
    node.put("over", curve.sweep().name());
    node.put("unit", curve.sweep().unit().symbol());
    node.put("unit in SI", curve.sweep().unit().factor());
    ArrayNode columns = node.putArray("columns");
    for (Column column : curve.columns()) {
      columns.addObject().put("name", column.name()).put("measures", column.dimension().words());
    }
    ArrayNode feeders = node.putArray("fed by");
    for (Feeders group : curve.feeders()) {
      feeders.add(group.side());
    }
    rows(node.putArray("up"), curve.up());
    rows(node.putArray("down"), curve.down());
    ArrayNode events = node.putArray("events");
    curve.events().forEach(event -> event(events.addObject(), event));
    ArrayNode gaps = node.putArray("no answer");
    for (Curve.Gap gap : curve.gaps()) {
      gaps.addObject().put("from", gap.from()).put("to", gap.to()).put("why", gap.why());
    }
    ArrayNode noticed = node.putArray("who would notice");
    answer.noticed().forEach(stretch -> noticed(noticed.addObject(), stretch));
  }

  private static void noticed(ObjectNode node, CurveAnswer.Noticed stretch) {
    node.put("from", stretch.from());
    node.put("to", stretch.to());
    node.put("verdict", stretch.verdict());
    ArrayNode shows = node.putArray("shows");
    stretch.shows().forEach(one -> shows.addObject().put("at", one.at()).put("says", one.says()));
    if (!stretch.says().isEmpty()) {
      node.put("says", stretch.says());
    }
  }

  private static void rows(ArrayNode array, List<Curve.Row> rows) {
    for (Curve.Row row : rows) {
      ObjectNode node = array.addObject();
      node.put("at", row.x());
      if (row.answered()) {
        row.values().forEach(node.putArray("values")::add);
        ArrayNode feeding = node.putArray("fed by");
        row.feeding().forEach(names -> names.forEach(feeding.addArray()::add));
      }
    }
  }

  private static void event(ObjectNode node, Curve.Event event) {
    node.put("at", event.x());
    node.put("low", event.low());
    node.put("high", event.high());
    node.put("way", way(event));
    node.put("says", ChangeWords.of(event));
    ArrayNode changes = node.putArray("changes");
    for (Curve.Change change : event.changes()) {
      changes
          .addObject()
          .put("subject", change.subject())
          .put("kind", change.what().name().toLowerCase(Locale.ROOT))
          .put("before", change.before())
          .put("after", change.after())
          .put("because", change.why());
    }
    ArrayNode causes = node.putArray("moved by");
    for (Curve.Cause cause : event.causes()) {
      causes
          .addObject()
          .put("part", cause.part())
          .put("number", cause.parameter())
          .put("down", cause.below())
          .put("up", cause.above());
    }
  }

  /** On which way an event is met: {@code both}, {@code up} or {@code down}. */
  static String way(Curve.Event event) {
    return event.way().name().toLowerCase(Locale.ROOT);
  }
}
