package dev.offtake.cause;

import dev.offtake.air.Day;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.DayReader;
import dev.offtake.system.Item;
import dev.offtake.system.Item.Entry;
import dev.offtake.system.Item.Section;
import dev.offtake.system.Item.Words;
import dev.offtake.system.Problems;
import dev.offtake.system.Texts;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Reads the air of readings: a day of the system, one line, or named lines. */
final class DayWords {
  private final BleedSystem system;
  private final Problems problems;

  DayWords(BleedSystem system, Problems problems) {
    this.system = system;
    this.problems = problems;
  }

  /** Reads a day however it is written; empty when there is a problem. */
  Optional<SaidDay> read(Entry entry) {
    Item value = entry.value();
    if (value instanceof Words words) {
      return text(words);
    }
    Day day = DayReader.of(entry, problems);
    Map<String, String> lines = new LinkedHashMap<>();
    if (value instanceof Section section) {
      section.entries().forEach((key, line) -> lines.put(key, text(line.value())));
    }
    return Optional.of(new SaidDay("", lines, day));
  }

  private static String text(Item item) {
    return item instanceof Words words ? words.text() : "";
  }

  /** Reads a day that is a name or one line. */
  Optional<SaidDay> text(Words words) {
    Optional<String> name = Texts.named(words.text(), system.days().keySet());
    try {
      String text = name.orElse(words.text());
      Day named = system.days().get(text);
      Day day = named == null ? BleedSystem.dayOf(text) : named;
      return Optional.of(new SaidDay(text, Map.of(), day));
    } catch (QuantityProblem problem) {
      problems.add(words, problem.wrong(), problem.mend());
      return Optional.empty();
    }
  }
}
