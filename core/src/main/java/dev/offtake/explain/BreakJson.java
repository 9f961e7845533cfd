package dev.offtake.explain;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.offtake.study.Sign;
import java.util.Locale;

/**
 * A {@link BreakAnswer} as JSON: the document of its state with more fields, SI inside; see {@link
 * StateJson}.
 */
public final class BreakJson {
  private BreakJson() {}

  /** Makes the document. */
  public static String print(BreakAnswer answer) {
    ObjectNode root = StateJson.document(answer.state());
    root.put("headline", answer.headline());
    answer.follows().forEach(root.putArray("what follows")::add);
    ArrayNode changed = root.putArray("changed");
    answer.changed().forEach(row -> changed(changed.addObject(), row));
    root.put("changed and not shown", answer.unshown());
    answer.back().forEach(root.putArray("back into the engine")::add);
    ArrayNode noticed = root.putArray("who would notice");
    answer.noticed().forEach(row -> noticed(noticed.addObject(), row));
    ArrayNode look = root.putArray("look also");
    answer.look().forEach(l -> look.addObject().put("what", l.what()).put("says", l.says()));
    return root.toPrettyString();
  }

  private static void changed(ObjectNode node, BreakAnswer.Changed row) {
    node.put("name", row.name());
    node.put("measures", row.measures().words());
    node.put("healthy", row.healthy());
    node.put("now", row.now());
    node.put("seen", row.seen());
  }

  private static void noticed(ObjectNode node, BreakAnswer.Noticed row) {
    node.put("power", row.power());
    node.put("verdict", row.verdict());
    node.put("says", row.says());
    ArrayNode signs = node.putArray("signs");
    row.signs().forEach(sign -> sign(signs.addObject(), sign));
  }

  private static void sign(ObjectNode node, Sign sign) {
    node.put("part", sign.part());
    node.put("is", sign.what().name().toLowerCase(Locale.ROOT));
    if (!sign.needle().isEmpty()) {
      node.put("needle", sign.needle());
    }
    node.put("reads", sign.reads());
    node.put("measures", sign.dimension().words());
    node.put("healthy", sign.healthy());
    node.put("now", sign.now());
    if (Double.isFinite(sign.limit())) {
      node.put("plain from", sign.limit());
    }
    node.put("verdict", BreakSigns.word(sign.verdict()));
    if (!sign.seen().isEmpty()) {
      node.put("seen", sign.seen());
    }
  }
}
