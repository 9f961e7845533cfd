package dev.offtake.system;

import dev.offtake.part.Form;
import dev.offtake.part.Key;
import dev.offtake.part.Kind;
import dev.offtake.quantity.Grammar;
import dev.offtake.system.Item.Entry;
import dev.offtake.system.Item.Section;
import dev.offtake.system.Item.Words;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The lines of a part under the names of its kind's keys; a group of lines is opened into {@code
 * group line}.
 */
final class Lines {
  private Lines() {}

  /** Keys of a kind by name. */
  static Map<String, Key> keys(Kind kind) {
    Map<String, Key> keys = new LinkedHashMap<>();
    kind.keys().forEach(key -> keys.put(key.name(), key));
    return keys;
  }

  /** Values by key; unknown keys are left out and told. */
  static Map<String, Item> of(PartDraft part, Kind kind, Problems problems) {
    Map<String, Key> keys = keys(kind);
    Map<String, Item> lines = new LinkedHashMap<>();
    for (Entry entry : part.entries().values()) {
      String name = entry.name().text();
      if (!name.equals("kind")) {
        open(name, entry, keys, lines, problems, kind);
      }
    }
    return lines;
  }

  private static void open(
      String name,
      Entry entry,
      Map<String, Key> keys,
      Map<String, Item> lines,
      Problems problems,
      Kind kind) {
    Key key = keys.get(name);
    boolean group = entry.value() instanceof Section && (key == null || !structured(key.form()));
    if (group && keys.keySet().stream().anyMatch(k -> k.startsWith(name + " "))) {
      for (Entry line : ((Section) entry.value()).entries().values()) {
        open(name + " " + line.name().text(), line, keys, lines, problems, kind);
      }
    } else if (key != null) {
      lines.put(name, entry.value());
    } else {
      unknown(name, entry, keys, problems, kind);
    }
  }

  private static void unknown(
      String name, Entry entry, Map<String, Key> keys, Problems problems, Kind kind) {
    boolean afterComma = entry.value() instanceof Words words && words.text().isEmpty();
    String mend =
        afterComma
            ? "If it belongs to the value before it, put that value in quotes"
            : Hint.of(name, keys.keySet());
    String wrong = Grammar.capitalA(kind.name()) + " has no line `" + name + "`";
    problems.add(entry.name(), wrong, mend);
  }

  private static boolean structured(Form form) {
    return form == Form.NEEDLES || form == Form.TABLE;
  }
}
