package dev.offtake.system;

import dev.offtake.part.Facts.Needle;
import dev.offtake.part.Facts.Path;
import dev.offtake.part.Facts.Reading;
import dev.offtake.part.Key;
import dev.offtake.part.Leg;
import dev.offtake.system.Item.Entry;
import dev.offtake.system.Item.Section;
import dev.offtake.system.Item.Words;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads values that name other things of the file: points, readings, parts, switches, days. */
final class References {
  static final String PRESSURE = " pressure";
  static final String TEMPERATURE = " temperature";

  private final String side;
  private final Context context;

  References(String side, Context context) {
    this.side = side;
    this.context = context;
  }

  /** Tells what is wrong with a value; unknown points are told by the {@link PointBook}. */
  void check(Words at, Key key) {
    String text = Values.withoutSource(at.text());
    if (text.isEmpty()) {
      return;
    }
    switch (key.form()) {
      case CHOICE -> known(text, key.choices(), key.choices().contains(text), at, key);
      case DAY -> known(text, context.days.keySet(), context.days.containsKey(text), at, key);
      case BUS -> known(text, context.switches.keySet(), at, key);
      case PART -> known(text, context.parts, at, key);
      case PATH -> pathWritten(text, at, key);
      case READING -> readingWritten(text, at);
      default -> {}
    }
  }

  private void known(String text, Collection<String> all, Item at, Key key) {
    known(text, NameBook.asWritten(side, all), !NameBook.find(side, text, all).isEmpty(), at, key);
  }

  private void known(String text, Collection<String> all, boolean found, Item at, Key key) {
    if (!found) {
      String wrong = "`" + text + "` is nothing that `" + key.name() + "` can say";
      context.problems.add(at, wrong, Hint.of(text, all));
    }
  }

  private void pathWritten(String text, Item at, Key key) {
    if (PathWords.of(text) == null) {
      String wrong = "`" + text + "` is no path from one point to another";
      context.problems.add(at, wrong, "Write it as in `" + key.example() + "`");
    }
  }

  private void readingWritten(String text, Item at) {
    if (readPoint(text).isEmpty()) {
      String wrong = "`" + text + "` does not say what is read";
      context.problems.add(at, wrong, "Write `" + text + " pressure` or `temperature`");
    }
  }

  /** The point of a reading as written; empty when it is none. */
  static String readPoint(String text) {
    if (text.endsWith(PRESSURE)) {
      return text.substring(0, text.length() - PRESSURE.length());
    }
    return text.endsWith(TEMPERATURE)
        ? text.substring(0, text.length() - TEMPERATURE.length())
        : "";
  }

  @Nullable Reading reading(String text) {
    String point = readPoint(text);
    return point.isEmpty()
        ? null
        : new Reading(context.points.full(side, point), text.endsWith(TEMPERATURE));
  }

  Path path(String text) {
    PathWords words = PathWords.of(text);
    if (words == null) {
      return new Path(Leg.AMBIENT, Leg.AMBIENT, true);
    }
    String from = context.points.full(side, words.from());
    return new Path(from, context.points.full(side, words.to()), words.bothWays());
  }

  /** Needles with what they read; told when one cannot be read. */
  List<Needle> needles(Item item, Key key) {
    if (!(item instanceof Section section)) {
      String wrong = "`" + key.name() + "` needs a mark and what it reads for each needle";
      context.problems.add(item, wrong, "Write it as in `" + key.example() + "`");
      return List.of();
    }
    List<Needle> needles = new ArrayList<>();
    for (Entry needle : section.entries().values()) {
      String text = needle.value() instanceof Words words ? words.text() : "";
      Reading reading = reading(Values.withoutSource(text));
      if (reading == null) {
        readingWritten(text, needle.value());
      } else {
        needles.add(new Needle(needle.name().text(), reading));
      }
    }
    return needles;
  }

  /** A text; in full where the key wants the name of a part or a switch. */
  String fullText(String text, Key key) {
    return switch (key.form()) {
      case PART -> NameBook.find(side, text, context.parts);
      case BUS -> NameBook.find(side, text, context.switches.keySet());
      default -> text;
    };
  }
}
