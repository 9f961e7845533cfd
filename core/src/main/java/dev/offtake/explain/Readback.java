package dev.offtake.explain;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.offtake.part.Kinds;
import dev.offtake.part.Parameter;
import dev.offtake.part.Part;
import dev.offtake.quantity.Grammar;
import dev.offtake.quantity.Style;
import dev.offtake.system.Assumption;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.Conflict;
import dev.offtake.system.ModelError;
import dev.offtake.system.NeverLine;
import dev.offtake.system.Problem;
import dev.offtake.system.Statement;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/** What was understood of a system file, what was assumed, what is still to be looked up. */
public final class Readback {
  private final BleedSystem system;
  private final Style style;

  /** Prepares to read a system back. */
  public Readback(BleedSystem system, Style style) {
    this.system = system;
    this.style = style;
  }

  /** The readback in sections, each a list of lines. */
  private Map<String, List<String>> sections() {
    Map<String, List<String>> sections = new LinkedHashMap<>();
    sections.put("UNDERSTOOD", understood());
    sections.put("LOOKS LIKE A SLIP", system.doubts().stream().map(Readback::doubt).toList());
    sections.put("STILL TO BE LOOKED UP", unknown());
    sections.put("PAPERS DISAGREE", system.conflicts().stream().map(this::conflict).toList());
    sections.put(
        "ASSUMED",
        Stream.concat(
                system.assumptions().stream()
                    .filter(a -> !a.unknown())
                    .map(a -> a.subject() + ", " + a.key() + ": " + a.says()),
                modelError())
            .toList());
    sections.put(
        "OVERRIDDEN ON ONE SIDE",
        system.overrides().stream()
            .map(o -> o.side() + ": " + o.part() + ", " + o.key() + " (line " + o.line() + ")")
            .toList());
    sections.put("NO SOURCE", withoutSource());
    sections.put("REMOVABLE UNITS", system.parts().stream().map(Readback::units).toList());
    sections.put("NEVER", system.never().stream().map(Readback::never).toList());
    return sections;
  }

  private List<String> understood() {
    Map<String, Integer> kinds = new LinkedHashMap<>();
    for (Part part : system.parts()) {
      kinds.merge(part.kind(), 1, Integer::sum);
    }
    List<String> lines = new ArrayList<>();
    lines.add(
        String.join(
            ", ",
            Grammar.count(system.network().points().size(), "point"),
            Grammar.count(system.parts().size(), "part"),
            Grammar.count(system.switches().size(), "switch"),
            Grammar.count(system.settings().size(), "power setting")));
    kinds.forEach((kind, count) -> lines.add(count + " x " + kind));
    return lines;
  }

  private Stream<String> modelError() {
    ModelError error = system.modelError();
    String says =
        "a forecast of a sound engine may be off by "
            + ErrorWords.of(error, style)
            + " (standard deviation) until a match of a healthy run tells better";
    return error.assumed() ? Stream.of("model error: " + says) : Stream.empty();
  }

  private List<String> unknown() {
    List<String> lines = new ArrayList<>();
    for (Assumption a : system.assumptions()) {
      if (a.unknown()) {
        lines.add(a.subject() + ": " + a.says());
      }
    }
    for (Statement s : system.statements()) {
      if (s.inForce() && s.stated().unknown()) {
        lines.add(s.part() + ", " + s.key() + ": " + s.stated().text() + at(s));
      }
    }
    return lines;
  }

  private static String doubt(Problem doubt) {
    return doubt.wrong() + ". " + doubt.mend() + " (line " + doubt.line() + ")";
  }

  private static String never(NeverLine line) {
    String source = line.source().isEmpty() ? "" : " (" + line.source() + ")";
    String judge = line.judgedByAPerson() ? "judged by you" : "understood";
    return line.text() + source + ": " + judge;
  }

  /** The units that a shop can take off a part, and the numbers that go with each. */
  private static String units(Part part) {
    Map<String, List<String>> carried = new LinkedHashMap<>();
    Kinds.named(part.kind())
        .ifPresent(kind -> kind.removableUnits().forEach(u -> carried.put(u, new ArrayList<>())));
    for (Parameter p : part.parameters()) {
      carried.computeIfAbsent(p.unit(), u -> new ArrayList<>()).add(p.name());
    }
    List<String> said = new ArrayList<>();
    carried.forEach(
        (unit, names) ->
            said.add(unit + (names.isEmpty() ? "" : " (" + String.join(", ", names) + ")")));
    return part.name() + ": " + String.join("; ", said);
  }

  private List<String> withoutSource() {
    return system.statements().stream()
        .filter(s -> s.inForce() && s.stated().source().isEmpty() && !s.stated().unknown())
        .map(s -> s.part() + ", " + s.key() + ": " + style.print(s.stated()) + at(s))
        .toList();
  }

  private static String at(Statement statement) {
    return " (line " + statement.line() + ")";
  }

  private String conflict(Conflict conflict) {
    List<String> said = new ArrayList<>();
    for (Statement s : conflict.statements()) {
      String source = s.stated().source().isEmpty() ? "no source" : s.stated().source();
      said.add(style.print(s.stated()) + " (" + source + (s.inForce() ? ", used)" : ")"));
    }
    return conflict.subject() + ", " + conflict.key() + ": " + String.join(" against ", said);
  }

  /**
   * The readback for people.
   *
   * @param width columns
   */
  public String text(int width) {
    StringBuilder out = new StringBuilder(system.title()).append('\n');
    sections()
        .forEach(
            (label, lines) -> {
              if (!lines.isEmpty()) {
                out.append('\n').append(label).append('\n');
                lines.forEach(line -> out.append(Columns.wrap(line, width, 2, 6)));
              }
            });
    return out.append('\n').append(Columns.wrap(StateAnswer.CAUTION, width, 0, 0)).toString();
  }

  /** The readback for other programs. */
  public String json() {
    ObjectNode root = new ObjectMapper().createObjectNode();
    root.put("offtake readback", 1);
    root.put("title", system.title());
    sections()
        .forEach(
            (label, lines) -> lines.forEach(root.withArray(label.toLowerCase(Locale.ROOT))::add));
    root.put("caution", StateAnswer.CAUTION);
    return root.toPrettyString() + "\n";
  }
}
