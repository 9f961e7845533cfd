package dev.offtake.system;

import dev.offtake.system.Draft.Sided;
import dev.offtake.system.Item.Entry;
import dev.offtake.system.Item.Section;
import dev.offtake.system.Item.Words;
import dev.offtake.system.LineUp.Lock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads line-ups: {@code {left pack switch: OFF, isolation valve: locked shut}}. */
final class LineUpReader {
  private static final List<String> LOCKS = Arrays.stream(Lock.values()).map(Lock::words).toList();

  private final Map<String, List<String>> switches;
  private final Collection<String> parts;
  private final Problems problems;

  private LineUpReader(
      Map<String, List<String>> switches, Collection<String> parts, Problems problems) {
    this.switches = switches;
    this.parts = parts;
    this.problems = problems;
  }

  /** Line-ups by name; what several sides say of one line-up is put together. */
  static Map<String, LineUp> read(
      List<Sided> drafts,
      Map<String, List<String>> switches,
      Collection<String> parts,
      Problems problems) {
    LineUpReader reader = new LineUpReader(switches, parts, problems);
    Map<String, LineUp> all = new LinkedHashMap<>();
    all.put(LineUp.USUAL, new LineUp(LineUp.USUAL, Map.of(), Map.of()));
    for (Sided draft : drafts) {
      all.merge(draft.at().text(), reader.lineUp(draft), LineUpReader::together);
    }
    return all;
  }

  private static LineUp together(LineUp one, LineUp two) {
    Map<String, String> positions = new LinkedHashMap<>(one.positions());
    positions.putAll(two.positions());
    Map<String, Lock> locks = new LinkedHashMap<>(one.locks());
    locks.putAll(two.locks());
    return new LineUp(one.name(), positions, locks);
  }

  private LineUp lineUp(Sided draft) {
    Map<String, String> positions = new LinkedHashMap<>();
    Map<String, Lock> locks = new LinkedHashMap<>();
    if (draft.value() instanceof Section section) {
      section.entries().values().forEach(e -> line(draft.side(), e, positions, locks));
    } else if (!(draft.value() instanceof Words words && words.text().isEmpty())) {
      String wrong = "The line-up `" + draft.at().text() + "` needs named lines";
      problems.add(draft.value(), wrong, "Write `{isolation: OPEN}`, or `{}` for the usual one");
    }
    return new LineUp(draft.at().text(), positions, locks);
  }

  private void line(
      String side, Entry entry, Map<String, String> positions, Map<String, Lock> locks) {
    String name = entry.name().text();
    String said = entry.value() instanceof Words words ? Values.withoutSource(words.text()) : "";
    String control = NameBook.find(side, name, switches.keySet());
    String part = NameBook.find(side, name, parts);
    if (!control.isEmpty()) {
      List<String> known = switches.getOrDefault(control, List.of());
      if (told(said, known, name, entry.value())) {
        positions.put(control, said);
      }
    } else if (!part.isEmpty()) {
      if (told(said, LOCKS, name, entry.value())) {
        locks.put(part, lock(said));
      }
    } else {
      List<String> known = new ArrayList<>(NameBook.asWritten(side, switches.keySet()));
      known.addAll(NameBook.asWritten(side, parts));
      String wrong = "There is no switch or part `" + name + "`";
      problems.add(entry.name(), wrong, Hint.of(name, known));
    }
  }

  private static Lock lock(String said) {
    return Arrays.stream(Lock.values())
        .filter(lock -> lock.words().equals(said))
        .findFirst()
        .orElseThrow();
  }

  private boolean told(String said, List<String> known, String name, Item at) {
    if (!known.contains(said)) {
      String wrong = "`" + name + "` cannot be `" + said + "`";
      problems.add(at, wrong, Hint.of(said, known));
    }
    return known.contains(said);
  }
}
