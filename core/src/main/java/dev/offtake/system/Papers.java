package dev.offtake.system;

import dev.offtake.system.Item.Entry;
import dev.offtake.system.Item.Section;
import dev.offtake.system.Item.Words;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The papers that statements come from, the ones that count most first. */
final class Papers {
  private static final Set<String> LINES = Set.of("title", "revision", "date");
  private static final Pattern REFERENCE =
      Pattern.compile("([A-Z][A-Za-z0-9-]*) +(p\\.|page|ch\\.|fig\\.|table|sheet|note).*");

  private final List<Paper> papers = new ArrayList<>();
  private final List<String> ids = new ArrayList<>();
  private final Problems problems;

  Papers(Collection<Entry> entries, Problems problems) {
    this.problems = problems;
    for (Entry entry : entries) {
      ids.add(entry.name().text());
      papers.add(paper(entry));
    }
  }

  List<Paper> all() {
    return papers;
  }

  private Paper paper(Entry entry) {
    String id = entry.name().text();
    if (!(entry.value() instanceof Section section)) {
      return new Paper(id, entry.value() instanceof Words words ? words.text() : "", "", "");
    }
    for (Entry line : section.entries().values()) {
      String name = line.name().text();
      if (!LINES.contains(name)) {
        problems.add(line.name(), "A paper has no line `" + name + "`", Hint.of(name, LINES));
      }
    }
    String title = text(section, "title");
    return new Paper(id, title, text(section, "revision"), text(section, "date"));
  }

  private static String text(Section section, String name) {
    Entry entry = section.entries().get(name);
    return entry != null && entry.value() instanceof Words words ? words.text() : "";
  }

  /** Short name of the paper that a source names; empty for another source. Tells unknown papers. */
  String paper(String source, Item at) {
    for (String id : ids) {
      if (source.equals(id) || source.startsWith(id + " ") || source.startsWith(id + ",")) {
        return id;
      }
    }
    Matcher reference = REFERENCE.matcher(source);
    if (!ids.isEmpty() && reference.matches()) {
      String id = reference.group(1);
      String wrong = "The paper `" + id + "` is not listed under `papers:`";
      problems.add(at, wrong, Hint.of(id, ids));
    }
    return "";
  }

  /** Rank of a paper, the smallest counting most; no paper comes last. */
  int rank(String paper) {
    int at = ids.indexOf(paper);
    return at < 0 ? ids.size() : at;
  }
}
