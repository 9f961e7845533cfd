package dev.offtake.cause;

import dev.offtake.system.BleedSystem;
import dev.offtake.system.Hint;
import dev.offtake.system.Item;
import dev.offtake.system.Item.Entry;
import dev.offtake.system.Item.Listing;
import dev.offtake.system.Item.Section;
import dev.offtake.system.Item.Words;
import dev.offtake.system.Problems;
import dev.offtake.system.Texts;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads one occasion of a YAML file: the lines of its head, and every other line as a reading.
 * {@code at} may hold the head in one line, or lines of its own.
 */
final class RowReader {
  static final String AT = "at";
  static final String POWER = "power";
  static final String CORE = "core";
  static final String FAN = "fan";
  static final String LINE_UP = "line-up";
  static final String SET = "set";
  static final String DAY = "day";
  static final String TRIP = "trip";
  static final String SAID_BY = "said by";
  private static final List<String> HEAD = List.of(LINE_UP, SET, DAY, TRIP, SAID_BY);
  private static final List<String> INSIDE = List.of(POWER, CORE, FAN, LINE_UP, SET, DAY, TRIP);

  private final OccasionReader reader;
  private final HeadReader heads;
  private final DayWords days;
  private final Problems problems;

  RowReader(BleedSystem system, OccasionReader reader, Problems problems) {
    this.reader = reader;
    this.problems = problems;
    heads = reader.heads();
    days = new DayWords(system, problems);
  }

  /** The occasion of one item of the list; empty with a problem told. */
  Optional<Occasion> read(Item item) {
    if (!(item instanceof Section row)) {
      String mend = "Write `- at: ground idle`, and the readings under it";
      problems.add(item, "A reading needs named lines, not " + item.words(), mend);
      return Optional.empty();
    }
    Head head = new Head(row);
    List<Entered> readings = new ArrayList<>();
    for (Entry entry : row.entries().values()) {
      String key = entry.name().text();
      if (key.equals(AT)) {
        at(head, entry.value());
      } else if (HEAD.contains(key)) {
        line(head, entry);
      } else if (entry.value() instanceof Words said) {
        readings.add(Entered.of(entry.name(), said));
      } else {
        String wrong = "`" + key + "` needs one value, not " + entry.value().words();
        problems.add(entry.value(), wrong, "Write `" + key + ": 15 psig`");
      }
    }
    return reader.read(head, readings);
  }

  private void at(Head head, Item value) {
    head.powerSaid = value instanceof Listing;
    if (value instanceof Words words) {
      heads.read(head, words);
    } else if (value instanceof Section section) {
      for (Entry entry : section.entries().values()) {
        inside(head, entry);
      }
    } else {
      problems.add(value, "`at` names one power, not a list", "Write a reading for each power");
    }
  }

  private void inside(Head head, Entry entry) {
    String key = entry.name().text();
    if (!INSIDE.contains(key)) {
      head.powerSaid = true;
      problems.add(entry.name(), "`at` has no line `" + key + "`", Hint.of(key, INSIDE));
    } else if (key.equals(POWER)) {
      heads.power(head, words(entry));
    } else if (key.equals(CORE)) {
      heads.core(head, words(entry));
    } else if (key.equals(FAN)) {
      heads.fan(head, words(entry));
    } else {
      line(head, entry);
    }
  }

  private void line(Head head, Entry entry) {
    switch (entry.name().text()) {
      case LINE_UP -> heads.lineUp(head, words(entry));
      case DAY -> head.day = days.read(entry);
      case TRIP -> trip(head, words(entry));
      case SAID_BY -> teller(head, words(entry));
      default -> set(head, entry);
    }
  }

  private void set(Head head, Entry entry) {
    if (entry.value() instanceof Section section) {
      section.entries().values().forEach(line -> heads.set(head, line.name(), words(line)));
    } else {
      String mend = "Write `set: {isolation: OPEN}`";
      problems.add(entry.value(), "`set` needs named lines, not " + entry.value().words(), mend);
    }
  }

  private void trip(Head head, Words words) {
    for (Words piece : Texts.pieces(words)) {
      if (!heads.trip(head, piece)) {
        String mend =
            "Write `before left overheat trip`, or `after left overheat trip, reset held`";
        problems.add(piece, "`" + piece.text() + "` is no side of a trip", mend);
      }
    }
  }

  private void teller(Head head, Words words) {
    if (words.text().equalsIgnoreCase(HeadReader.CREW)) {
      head.teller = Occasion.Teller.CREW;
    } else {
      String wrong = "`" + words.text() + "` is nobody whose word is weighed";
      problems.add(words, wrong, "Write `said by: crew`, or leave it out for what you read");
    }
  }

  private static Words words(Entry entry) {
    return entry.value() instanceof Words words ? words : Texts.at(entry.value(), "");
  }
}
