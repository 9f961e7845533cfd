package dev.offtake.explain;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;

/** A {@link StateAnswer} as JSON, SI inside, its layout numbered by {@code offtake state}. */
public final class StateJson {
  /** Number of the layout; raised when a field changes its meaning or goes. */
  public static final int LAYOUT = 1;

  private static final ObjectMapper MAPPER = new ObjectMapper();

  private StateJson() {}

  /** Makes the document. */
  public static String print(StateAnswer answer) {
    return document(answer).toPrettyString();
  }

  /** The document, open for more. */
  static ObjectNode document(StateAnswer answer) {
    ObjectNode root = MAPPER.createObjectNode();
    root.put("offtake state", LAYOUT);
    fill(root, answer);
    answer
        .ifCorrected()
        .ifPresent(other -> fill(root.putObject("if corrected speed is held"), other));
    return root;
  }

  private static void fill(ObjectNode root, StateAnswer answer) {
    root.put("title", answer.asked().title());
    root.put("power", answer.asked().power());
    root.put("day", answer.asked().day());
    root.put("line-up", answer.asked().lineUp());
    if (!answer.asked().broken().isEmpty()) {
      texts(root.putArray("if"), answer.asked().broken());
    }
    root.put("solved", answer.solved());
    texts(root.putArray("notes"), answer.asked().warnings());
    texts(root.putArray("answer"), answer.headline());
    ArrayNode why = root.putArray("why");
    answer
        .why()
        .forEach(
            row ->
                why.addObject()
                    .put("part", row.part())
                    .put("does", row.word())
                    .put("because", row.because()));
    ArrayNode air = root.putArray("air");
    answer.air().forEach(row -> air(air.addObject(), row));
    root.put("gauges", answer.gauges());
    panel(root, answer.panel());
    ArrayNode room = root.putArray("room left");
    answer.room().forEach(r -> room.addObject().put("user", r.name()).put("says", r.says()));
    texts(root.putArray("memory"), answer.memory());
    root.put("next change", answer.nextChange());
    ArrayNode changes = root.putArray("changes");
    answer.changes().forEach(change -> change(changes.addObject(), change));
    StabilityJson.put(root.putObject("stability"), answer.stability());
    root.put("stands on", answer.asked().standsOn());
    texts(root.putArray("assumes"), answer.asked().assumes());
    root.put("balance", answer.balance());
    root.put("caution", answer.caution());
  }

  private static void panel(ObjectNode root, Panel panel) {
    ArrayNode needles = root.putArray("needles");
    for (Panel.Needle needle : panel.needles()) {
      ObjectNode node = needles.addObject();
      node.put("gauge", needle.gauge()).put("mark", needle.mark()).put("reads", needle.reads());
      number(node, needle.temperature() ? "shows K" : "shows Pa", needle.value());
      node.put("says", needle.says()).put("pegged", needle.pegged()).put("seen", needle.seen());
    }
    ArrayNode lights = root.putArray("lights");
    for (Panel.Lamp lamp : panel.lights()) {
      lights
          .addObject()
          .put("light", lamp.name())
          .put("lit", lamp.lit())
          .put("because", lamp.because());
    }
    ArrayNode engine = root.putArray("engine gauges");
    for (Panel.Engine gauge : panel.engine()) {
      engine
          .addObject()
          .put("gauge", gauge.name())
          .put("says", gauge.says())
          .put("because", gauge.because());
    }
  }

  private static void change(ObjectNode node, StateAnswer.Change change) {
    node.put("what", change.label().toLowerCase(Locale.ROOT));
    number(node, "core", change.core());
    number(node, "from core", change.low());
    number(node, "to core", change.high());
    node.put("says", change.says());
  }

  private static void texts(ArrayNode array, Iterable<String> texts) {
    texts.forEach(array::add);
  }

  private static void air(ObjectNode node, StateAnswer.Air row) {
    node.put("name", row.name());
    number(node, "gauge pressure Pa", row.gaugePressure());
    number(node, "temperature K", row.temperature());
    number(node, "flow kg/s", row.flow());
    node.put("note", row.note());
  }

  private static void number(ObjectNode node, String field, double value) {
    if (Double.isFinite(value)) {
      node.put(field, value);
    }
  }
}
