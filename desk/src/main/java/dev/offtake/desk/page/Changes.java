package dev.offtake.desk.page;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.offtake.explain.ChangeWords;
import dev.offtake.explain.CurveAnswer;
import dev.offtake.explain.Question;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.study.Curve;
import dev.offtake.system.BleedSystem;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** What changes over as power comes up and goes down again, for the notches of the rail. */
final class Changes {
  /** States after which something is no longer as it should be. */
  private static final Set<String> LIMITS =
      Set.of("over limit", "deadheaded", "relieving", "tripped", "starved");

  private Changes() {}

  /** What a curve over the whole rail meets. */
  static List<Curve.Event> events(BleedSystem system, Ask ask) {
    Ask still =
        new Ask(
            ask.power(),
            Double.NaN,
            ask.day(),
            ask.lineUp(),
            ask.sets(),
            ask.faults(),
            ask.style());
    Question question = still.question(system);
    CurveAnswer.Request request = new CurveAnswer.Request(over(system), 0, "");
    try {
      return CurveAnswer.of(question, request, ask.style(), share -> Work.goOn()).curve().events();
    } catch (QuantityProblem problem) {
      throw Refusal.of(problem);
    }
  }

  /** The rail as a curve is asked for it. */
  static String over(BleedSystem system) {
    return String.format(
        Locale.ROOT,
        "core=%.3f..%.3f %%",
        100 * SystemDocument.low(system),
        100 * SystemDocument.high(system));
  }

  /** The document. */
  static ObjectNode of(List<Curve.Event> events) {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    ArrayNode up = root.putArray("up");
    ArrayNode down = root.putArray("down");
    ArrayNode limits = root.putArray("limits");
    for (Curve.Event event : events) {
      if (event.way() != Curve.Way.DOWN) {
        event(up.addObject(), event, event.changes());
        limits(limits, event);
      }
    }
    List<Curve.Event> falling = new ArrayList<>(events);
    Collections.reverse(falling);
    for (Curve.Event event : falling) {
      if (event.way() != Curve.Way.UP) {
        event(down.addObject(), event, falling(event));
      }
    }
    return root;
  }

  /** What happens with power going down. */
  static List<Curve.Change> falling(Curve.Event event) {
    return event.way() == Curve.Way.DOWN
        ? event.changes()
        : event.changes().stream()
            .map(c -> new Curve.Change(c.what(), c.subject(), c.after(), c.before(), ""))
            .toList();
  }

  private static void event(ObjectNode node, Curve.Event event, List<Curve.Change> changes) {
    node.put("core", event.x()).put("low", event.low()).put("high", event.high());
    node.put("says", ChangeWords.of(changes));
    ArrayNode parts = node.putArray("parts");
    changes.stream().map(Curve.Change::subject).filter(s -> !s.isEmpty()).forEach(parts::add);
    if (changes.stream().anyMatch(change -> change.what() == Curve.What.LEADER)) {
      node.put("handover", true);
    }
  }

  private static void limits(ArrayNode limits, Curve.Event event) {
    List<Curve.Change> passed =
        event.changes().stream()
            .filter(c -> c.what() == Curve.What.TABLE || LIMITS.contains(c.after()))
            .toList();
    if (!passed.isEmpty()) {
      limits.addObject().put("core", event.x()).put("says", ChangeWords.of(passed));
    }
  }
}
