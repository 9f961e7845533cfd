package dev.offtake.desk.page;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.offtake.explain.BreakAnswer;
import dev.offtake.explain.BreakInquiry;
import dev.offtake.explain.Question;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.study.Sign;
import dev.offtake.system.BleedSystem;
import java.util.Locale;

/** What follows from a failure and who would notice, as the page is sent it. */
final class BreakDocument {
  private final Shows shows;
  private final ObjectNode root = JsonNodeFactory.instance.objectNode();

  private BreakDocument(Shows shows) {
    this.shows = shows;
  }

  /** Answers a question about a broken system. */
  static ObjectNode of(BleedSystem system, Ask ask) {
    Question question = ask.question(system);
    if (question.faults().isEmpty()) {
      throw new Refusal(Refusal.BAD, "nothing is broken", "say what is, with if=");
    }
    try {
      BreakAnswer answer = BreakInquiry.answer(question, ask.style());
      return new BreakDocument(new Shows(ask.style())).all(answer);
    } catch (QuantityProblem problem) {
      throw Refusal.of(problem);
    }
  }

  private ObjectNode all(BreakAnswer answer) {
    root.put("solved", answer.state().solved());
    root.put("headline", answer.headline());
    answer.beside().forEach(root.putArray("beside")::add);
    answer.follows().forEach(root.putArray("follows")::add);
    ArrayNode changed = root.putArray("changed");
    answer.changed().forEach(row -> changed(changed.addObject(), row));
    root.put("unshown", answer.unshown());
    ArrayNode notice = root.putArray("notice");
    answer.noticed().forEach(row -> notice(notice.addObject(), row));
    ArrayNode look = root.putArray("look");
    answer.look().forEach(l -> look.addObject().put("what", l.what()).put("says", l.says()));
    answer.back().forEach(root.putArray("back")::add);
    if (!answer.byHand().isEmpty()) {
      root.put("byHand", answer.byHand());
    }
    answer.state().memory().forEach(root.putArray("memory")::add);
    answer.state().stability().says().forEach(root.putArray("stability")::add);
    return root;
  }

  private void changed(ObjectNode node, BreakAnswer.Changed row) {
    node.put("name", row.name()).put("measures", row.measures().words());
    node.put("healthy", row.healthy()).put("now", row.now());
    String was = shows.value(row.healthy(), row.measures());
    String is = shows.value(row.now(), row.measures());
    node.put("was", was).put("is", is).put("says", is + " (was " + was + ")");
    node.put("seen", row.seen());
  }

  private void notice(ObjectNode node, BreakAnswer.Noticed row) {
    node.put("power", row.power()).put("verdict", row.verdict()).put("says", row.says());
    ArrayNode signs = node.putArray("signs");
    row.signs().forEach(sign -> sign(signs.addObject(), sign));
  }

  private void sign(ObjectNode node, Sign sign) {
    node.put("part", sign.part()).put("is", sign.what().name().toLowerCase(Locale.ROOT));
    if (!sign.needle().isEmpty()) {
      node.put("needle", sign.needle());
    }
    node.put("reads", sign.reads());
    boolean words = sign.dimension() == Dimension.NUMBER;
    node.put("was", words ? sign.before() : shows.value(sign.healthy(), sign.dimension()));
    node.put("now", words ? sign.after() : shows.value(sign.now(), sign.dimension()));
    node.put("verdict", verdict(sign.verdict()));
    if (!sign.seen().isEmpty()) {
      node.put("seen", sign.seen());
    }
  }

  /** A verdict in the words of the answers. */
  static String verdict(Sign.Verdict verdict) {
    return switch (verdict) {
      case PLAIN -> "plain";
      case LOST -> "lost in the gauge";
      case HIDDEN -> "HIDDEN";
    };
  }
}
