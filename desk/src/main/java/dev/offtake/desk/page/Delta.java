package dev.offtake.desk.page;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.DoubleNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.NullNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Iterator;
import java.util.Map;
import java.util.Set;

/**
 * What differs between two documents of one shape, so that thousands of states fit into a sheet.
 *
 * <p>Of two objects, or two lists as long as each other, the difference is an object with the
 * entries that differ, and null for one that has gone; of anything else it is the new value in a
 * list of one. A script puts it together again (page/pocket.js).
 */
final class Delta {
  /** Numbers keep so many figures: more than is shown. */
  private static final MathContext FIGURES = new MathContext(5);

  /** What the sheet can tell by comparing with the sound state itself, or never shows. */
  private static final Set<String> LEFT_OUT =
      Set.of("was", "degreesWas", "flowWas", "warnings", "assumes", "caution", "balance");

  private Delta() {}

  /** The same document without what the sheet does without, numbers shortened. */
  static JsonNode tidy(JsonNode node) {
    if (node instanceof ObjectNode object) {
      ObjectNode tidy = JsonNodeFactory.instance.objectNode();
      for (Map.Entry<String, JsonNode> entry : object.properties()) {
        if (!LEFT_OUT.contains(entry.getKey())) {
          tidy.set(entry.getKey(), tidy(entry.getValue()));
        }
      }
      return tidy;
    }
    if (node instanceof ArrayNode array) {
      ArrayNode tidy = JsonNodeFactory.instance.arrayNode();
      array.forEach(each -> tidy.add(tidy(each)));
      return tidy;
    }
    return node.isDouble() ? number(node.doubleValue()) : node;
  }

  private static JsonNode number(double value) {
    if (Math.abs(value) < 1e-6) {
      return JsonNodeFactory.instance.numberNode(0);
    }
    BigDecimal shorter = BigDecimal.valueOf(value).round(FIGURES);
    return shorter.stripTrailingZeros().scale() <= 0
        ? JsonNodeFactory.instance.numberNode(shorter.longValue())
        : DoubleNode.valueOf(shorter.doubleValue());
  }

  /** From one document to another. */
  static JsonNode between(JsonNode one, JsonNode two) {
    if (one instanceof ObjectNode before && two instanceof ObjectNode after) {
      return objects(before, after);
    }
    if (one instanceof ArrayNode before
        && two instanceof ArrayNode after
        && before.size() == after.size()) {
      return lists(before, after);
    }
    return JsonNodeFactory.instance.arrayNode().add(two);
  }

  private static ObjectNode objects(ObjectNode before, ObjectNode after) {
    ObjectNode delta = JsonNodeFactory.instance.objectNode();
    for (Map.Entry<String, JsonNode> entry : after.properties()) {
      JsonNode was = before.get(entry.getKey());
      if (was == null) {
        delta.set(entry.getKey(), JsonNodeFactory.instance.arrayNode().add(entry.getValue()));
      } else if (!was.equals(entry.getValue())) {
        delta.set(entry.getKey(), between(was, entry.getValue()));
      }
    }
    for (Iterator<String> names = before.fieldNames(); names.hasNext(); ) {
      String name = names.next();
      if (!after.has(name)) {
        delta.set(name, NullNode.instance);
      }
    }
    return delta;
  }

  private static ObjectNode lists(ArrayNode before, ArrayNode after) {
    ObjectNode delta = JsonNodeFactory.instance.objectNode();
    for (int i = 0; i < after.size(); i++) {
      if (!before.get(i).equals(after.get(i))) {
        delta.set(String.valueOf(i), between(before.get(i), after.get(i)));
      }
    }
    return delta;
  }
}
