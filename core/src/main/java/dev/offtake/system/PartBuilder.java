package dev.offtake.system;

import dev.offtake.air.Day;
import dev.offtake.part.Key;
import dev.offtake.part.Kind;
import dev.offtake.part.Part;
import dev.offtake.system.Item.Entry;
import dev.offtake.system.Item.Section;
import dev.offtake.system.Item.Words;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Lets the kinds build the parts of a draft. Conditions may name positions of parts that come later
 * ({@code overheat trip is tripped}), so that the positions of all are gathered from their kinds
 * first.
 */
final class PartBuilder {
  /** A draft with its kind and its lines. */
  private record Known(PartDraft draft, Kind kind, Map<String, Item> lines) {}

  /** Parts and what was noted while they were read. */
  record Built(List<Part> parts, Context context) {}

  private final Draft draft;
  private final Map<String, Kind> kinds = new LinkedHashMap<>();
  private final Map<String, List<String>> switches;
  private final Map<String, Day> days;
  private final Papers papers;

  PartBuilder(
      Draft draft,
      List<Kind> kinds,
      Map<String, List<String>> switches,
      Map<String, Day> days,
      Papers papers) {
    this.draft = draft;
    this.switches = switches;
    this.days = days;
    this.papers = papers;
    kinds.forEach(kind -> this.kinds.put(kind.name(), kind));
  }

  Built build(Problems problems) {
    List<Known> known = new ArrayList<>();
    for (PartDraft part : draft.parts.values()) {
      Kind kind = kind(part, problems);
      if (kind != null) {
        known.add(new Known(part, kind, Lines.of(part, kind, problems)));
      }
    }
    PointBook points = new PointBook(draft.points.keySet(), draft.sides);
    known.forEach(part -> mention(part, points));
    points.settle();
    if (known.size() == draft.parts.size()) {
      points.check(problems);
    }
    Map<String, List<String>> positions = new LinkedHashMap<>();
    for (Known part : known) {
      if (!part.kind().positions().isEmpty()) {
        positions.put(part.draft().name(), part.kind().positions());
      }
    }
    Context context = context(problems, points, positions);
    context.doubts.unfold(draft.sides);
    List<Part> parts = build(known, context);
    // By identity, as a kind is one object: comparing all that it holds costs a start 20 ms.
    Set<Kind> used = Collections.newSetFromMap(new IdentityHashMap<>());
    known.stream().map(Known::kind).filter(used::add).forEach(kind -> assume(kind, context));
    return new Built(parts, context);
  }

  /** Notes once what every part of a kind takes for granted. */
  private static void assume(Kind kind, Context context) {
    kind.assumes()
        .forEach(
            (key, says) ->
                context.assumptions.add(new Assumption("every " + kind.name(), key, says, false)));
  }

  private Context context(
      Problems problems, PointBook points, Map<String, List<String>> positions) {
    Logic logic = new Logic(switches, positions, points, problems);
    return new Context(problems, points, logic, draft.parts.keySet(), switches, days, papers);
  }

  private static List<Part> build(List<Known> known, Context context) {
    List<Part> parts = new ArrayList<>();
    for (Known part : known) {
      parts.add(part.kind().build(new PartFacts(part.draft(), part.kind(), part.lines(), context)));
    }
    return parts;
  }

  private @Nullable Kind kind(PartDraft part, Problems problems) {
    Entry entry = part.entries().get("kind");
    String usual = PartSections.kind(part.section());
    String name = entry != null && entry.value() instanceof Words words ? words.text() : usual;
    if (name.isEmpty()) {
      String wrong = "The part `" + part.at().text() + "` does not say what kind it is";
      problems.add(part.at(), wrong, "Write `kind: check valve` or another kind under it");
      return null;
    }
    Kind kind = kinds.get(name);
    if (kind == null) {
      Item at = entry == null ? part.at() : entry.value();
      problems.add(at, "There is no kind `" + name + "`", Hint.of(name, kinds.keySet()));
    }
    return kind;
  }

  private static void mention(Known part, PointBook points) {
    for (Key key : part.kind().keys()) {
      Item item = part.lines().get(key.name());
      String side = part.draft().side();
      if (item instanceof Words words) {
        mention(side, key, Values.withoutSource(words.text()), words, points);
      } else if (item instanceof Section section) {
        for (Entry needle : section.entries().values()) {
          if (needle.value() instanceof Words words) {
            mention(side, key, Values.withoutSource(words.text()), words, points);
          }
        }
      }
    }
  }

  private static void mention(String side, Key key, String text, Item at, PointBook points) {
    switch (key.form()) {
      case POINT -> points.mention(side, text, at, true);
      case ZONE -> points.mention(side, text, at, false);
      case READING, NEEDLES -> {
        String point = References.readPoint(text);
        if (!point.isEmpty()) {
          points.mention(side, point, at, false);
        }
      }
      case PATH -> {
        PathWords path = PathWords.of(text);
        if (path != null) {
          points.mention(side, path.from(), at, true);
          points.mention(side, path.to(), at, true);
        }
      }
      default -> {}
    }
  }
}
