package dev.offtake.desk.page;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.offtake.part.Kind;
import dev.offtake.part.Kinds;
import dev.offtake.part.Leg;
import dev.offtake.part.Mode;
import dev.offtake.part.Part;
import dev.offtake.part.Role;
import dev.offtake.quantity.Stated;
import dev.offtake.quantity.Style;
import dev.offtake.system.Assumption;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.Conflict;
import dev.offtake.system.LineUp;
import dev.offtake.system.Statement;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * A part as the page is sent it: what it is, its numbers, how it can break.
 *
 * @param system of the part
 * @param part which
 * @param possible the failures that can happen in this system, part and mode
 * @param style units
 */
record PartDocument(BleedSystem system, Part part, Set<String> possible, Style style) {
  void fill(ObjectNode node) {
    node.put("name", part.name()).put("kind", part.kind());
    node.put("role", part.role().name().toLowerCase(Locale.ROOT));
    String side = SystemDocument.side(system, part.name());
    if (!side.isEmpty()) {
      node.put("side", side);
    }
    Optional<Kind> kind = Kinds.named(part.kind());
    kind.ifPresent(k -> node.put("symbol", k.symbol()).put("says", k.says()));
    if (!part.attachedTo().isEmpty()) {
      node.put("attachedTo", part.attachedTo());
    }
    legs(node.putArray("legs"));
    kind.ifPresent(k -> k.removableUnits().forEach(node.putArray("units")::add));
    numbers(node.putArray("numbers"));
    assumed(node.putArray("assumed"));
    modes(node.putArray("modes"));
    ArrayNode locks = node.putArray("locks");
    for (LineUp.Lock lock : LineUp.Lock.values()) {
      if (part.role() == Role.VALVE) {
        locks.add(lock.words());
      }
    }
  }

  private void legs(ArrayNode legs) {
    for (Leg leg : part.legs()) {
      ObjectNode node = legs.addObject().put("from", leg.from()).put("to", leg.to());
      if (!leg.bothWays()) {
        node.put("oneWay", true);
      }
    }
  }

  private void numbers(ArrayNode numbers) {
    for (Statement statement : system.statements()) {
      if (statement.part().equals(part.name()) && statement.inForce()) {
        number(numbers.addObject(), statement);
      }
    }
  }

  private void number(ObjectNode node, Statement statement) {
    Stated stated = statement.stated();
    String says = style.print(stated.nominal(), stated.dimension());
    node.put("key", statement.key()).put("says", says).put("written", stated.text());
    if (stated.low() < stated.high()) {
      node.put(
          "tolerance",
          style.print(
              new Stated(
                  stated.nominal(),
                  stated.low(),
                  stated.high(),
                  stated.knowledge(),
                  stated.dimension(),
                  "",
                  "")));
    }
    node.put("known", stated.knowledge().name().toLowerCase(Locale.ROOT));
    if (!stated.source().isEmpty()) {
      node.put("source", stated.source());
    }
    if (statement.line() > 0) {
      node.put("line", statement.line());
    }
    for (Conflict conflict : system.conflicts()) {
      if (conflict.subject().equals(part.name()) && conflict.key().equals(statement.key())) {
        ArrayNode all = node.putArray("conflict");
        conflict.statements().forEach(s -> all.add(s.stated().text() + "; " + s.stated().source()));
      }
    }
  }

  /** What the file does not say of it. */
  private void assumed(ArrayNode assumed) {
    for (Assumption assumption : system.assumptions()) {
      if (assumption.subject().equals(part.name())) {
        assumed.addObject().put("key", assumption.key()).put("says", assumption.says());
      }
    }
  }

  private void modes(ArrayNode modes) {
    for (Mode mode : system.modes(part)) {
      if (possible.contains(part.name() + " " + mode.name())) {
        new ModeDocument(part, mode, style).fill(modes.addObject());
      }
    }
  }
}
