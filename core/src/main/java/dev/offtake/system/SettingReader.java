package dev.offtake.system;

import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.QuantityReader;
import dev.offtake.quantity.Stated;
import dev.offtake.system.Item.Entry;
import dev.offtake.system.Item.Section;
import dev.offtake.system.Item.Words;
import dev.offtake.system.Setting.Holds;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Reads power settings: {@code {core: 62 %, fan: 24 %, holds: physical; SD p.2}}. */
final class SettingReader {
  private static final List<String> LINES = List.of("core", "fan", "holds", "day", "line-up");
  private static final List<String> HOLDS = List.of("physical", "corrected", "unknown");

  private final Collection<String> days;
  private final Collection<String> lineUps;
  private final Papers papers;
  private final Problems problems;
  private final List<Statement> statements = new ArrayList<>();

  private SettingReader(
      Collection<String> days, Collection<String> lineUps, Papers papers, Problems problems) {
    this.days = days;
    this.lineUps = lineUps;
    this.papers = papers;
    this.problems = problems;
  }

  /** Power settings by name, and the speeds that they state. */
  record Read(Map<String, Setting> settings, List<Statement> statements) {}

  static Read read(
      Collection<Entry> entries,
      Collection<String> days,
      Collection<String> lineUps,
      Papers papers,
      Problems problems) {
    SettingReader reader = new SettingReader(days, lineUps, papers, problems);
    Map<String, Setting> settings = new LinkedHashMap<>();
    entries.forEach(entry -> settings.put(entry.name().text(), reader.setting(entry)));
    return new Read(settings, reader.statements);
  }

  private Setting setting(Entry entry) {
    String name = entry.name().text();
    Section lines = Section.emptyAt(entry.value());
    if (entry.value() instanceof Section section) {
      lines = section;
    }
    for (Entry line : lines.entries().values()) {
      String key = line.name().text();
      if (!LINES.contains(key)) {
        problems.add(line.name(), "A power setting has no line `" + key + "`", Hint.of(key, LINES));
      }
    }
    if (!lines.entries().containsKey("core")) {
      String wrong = "The power setting `" + name + "` has no core speed";
      problems.add(entry.name(), wrong, "Write `{core: 62 %}`");
    }
    String day = one(lines, "day", days);
    String lineUp = one(lines, "line-up", lineUps);
    return new Setting(
        name,
        speed(name, lines, "core"),
        speed(name, lines, "fan"),
        holds(lines),
        day,
        lineUp,
        source(lines));
  }

  private double speed(String name, Section lines, String key) {
    String text = text(lines, key);
    if (text.isEmpty()) {
      return Double.NaN;
    }
    Item at = value(lines, key);
    try {
      Stated stated = QuantityReader.read(text, Dimension.SHARE).withSource(source(lines));
      double speed = stated.nominal();
      String paper = papers.paper(stated.source(), at);
      statements.add(new Statement(name, key, at.file(), at.line(), stated, paper, true));
      if (speed < 0 || speed > 1.3) {
        String wrong = "No engine runs at " + Values.withoutSource(text);
        problems.add(at, wrong, "Give the speed in % of 100 % speed");
      }
      return speed;
    } catch (QuantityProblem problem) {
      problems.add(at, problem.wrong(), problem.mend());
      return Double.NaN;
    }
  }

  private Holds holds(Section lines) {
    String text = one(lines, "holds", HOLDS);
    return text.isEmpty() ? Holds.UNKNOWN : Holds.valueOf(text.toUpperCase(Locale.ROOT));
  }

  /** The first source that a line of the setting gives. */
  private static String source(Section lines) {
    return lines.entries().keySet().stream()
        .map(key -> Values.source(text(lines, key)))
        .filter(source -> !source.isEmpty())
        .findFirst()
        .orElse("");
  }

  private String one(Section lines, String key, Collection<String> known) {
    String text = Values.withoutSource(text(lines, key));
    if (text.isEmpty() || known.contains(text)) {
      return text;
    }
    String wrong = "`" + text + "` is nothing that `" + key + "` can say";
    problems.add(value(lines, key), wrong, Hint.of(text, known));
    return "";
  }

  private static Item value(Section lines, String key) {
    Entry entry = lines.entries().get(key);
    return entry == null ? lines : entry.value();
  }

  private static String text(Section lines, String key) {
    return value(lines, key) instanceof Words words ? words.text() : "";
  }
}
