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
import dev.offtake.system.YamlTree;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads a YAML file of readings. */
final class YamlReadings {
  static final String VERSION = "offtake readings";
  static final String SYSTEM = "system";
  static final String SQUAWK = "squawk";
  static final String ITEM = "item";
  static final String DATE = "date";
  static final String GAUGES = "gauges used";
  static final String DAY = "day";
  static final String READINGS = "readings";
  static final String SEEN = "seen";

  /** All sections, in the order in which they are written. */
  static final List<String> SECTIONS =
      List.of(VERSION, SYSTEM, SQUAWK, ITEM, DATE, GAUGES, DAY, READINGS, SEEN);

  private static final String ONE = "1";
  private static final YamlTree.Begin BEGIN =
      new YamlTree.Begin(
          "readings file", "Begin with `offtake readings: 1`, then `readings:` and `- at: …`");

  private final BleedSystem system;
  private final Problems problems;

  YamlReadings(BleedSystem system, Problems problems) {
    this.system = system;
    this.problems = problems;
  }

  /** The readings of a text, as far as they could be read; empty when it is no such file. */
  Optional<Readings> read(String name, String text) {
    Section root = YamlTree.read(name, text, BEGIN, problems);
    if (root == null || !version(root)) {
      return Optional.empty();
    }
    for (Entry entry : root.entries().values()) {
      String key = entry.name().text();
      if (!SECTIONS.contains(key)) {
        problems.add(entry.name(), "Readings have no line `" + key + "`", Hint.of(key, SECTIONS));
      }
    }
    Gauges gauges = new Gauges(system, true, problems);
    UsedGaugeReader gaugeReader = new UsedGaugeReader(gauges, problems);
    section(root, GAUGES).forEach(gaugeReader::read);
    Optional<LocalDate> date = gaugeReader.date(root, DATE);
    Optional<SaidDay> day =
        Optional.ofNullable(root.entries().get(DAY)).flatMap(new DayWords(system, problems)::read);
    OccasionReader reader = new OccasionReader(system, gauges, day, problems);
    List<Occasion> occasions = occasions(root, new RowReader(system, reader, problems));
    List<Seen> seen = seen(root);
    if (occasions.isEmpty() && seen.isEmpty() && problems.none()) {
      problems.add(root, "The file holds no reading", "Write `readings:` and `- at: …` under it");
    }
    return Optional.of(
        new Readings(
            text(root, SYSTEM),
            text(root, SQUAWK),
            text(root, ITEM),
            date,
            day,
            gauges.all(),
            occasions,
            seen,
            List.of()));
  }

  private boolean version(Section root) {
    if (text(root, VERSION).equals(ONE)) {
      return true;
    }
    Entry given = root.entries().get(VERSION);
    if (given != null) {
      String wrong = "These readings are of version " + given.value().words();
      problems.add(given.value(), wrong, "This Offtake reads `offtake readings: 1`");
    } else if (root.entries().containsKey("offtake")) {
      String mend = "Give the readings; the system file comes before them";
      problems.add(root, "This is a system file, not readings", mend);
    } else {
      problems.add(root, "This is not a file of readings", BEGIN.mend());
    }
    return false;
  }

  private List<Occasion> occasions(Section root, RowReader rows) {
    List<Occasion> occasions = new ArrayList<>();
    Entry entry = root.entries().get(READINGS);
    if (entry != null && entry.value() instanceof Listing listing) {
      listing.items().forEach(item -> rows.read(item).ifPresent(occasions::add));
    } else if (entry != null && !entry.value().words().equals("nothing")) {
      String mend = "Begin each with a dash: `- at: ground idle`";
      problems.add(entry.value(), "`readings:` needs a list", mend);
    }
    return occasions;
  }

  private List<Seen> seen(Section root) {
    SeenReader reader = new SeenReader(system, problems);
    List<Seen> seen = new ArrayList<>();
    for (Entry entry : section(root, SEEN)) {
      Words said = entry.value() instanceof Words words ? words : Texts.at(entry.value(), "");
      reader.read(entry.name(), said).ifPresent(seen::add);
    }
    return seen;
  }

  private List<Entry> section(Section root, String key) {
    Entry entry = root.entries().get(key);
    if (entry != null && entry.value() instanceof Section section) {
      return List.copyOf(section.entries().values());
    }
    if (entry != null && !entry.value().words().equals("nothing")) {
      problems.add(
          entry.value(), "`" + key + "` needs named lines", "Write `name: value` under it");
    }
    return List.of();
  }

  private String text(Section root, String key) {
    Entry entry = root.entries().get(key);
    Item value = entry == null ? root : entry.value();
    if (entry != null && !(value instanceof Words)) {
      problems.add(value, "`" + key + "` needs words, not " + value.words(), "Write one line");
    }
    return value instanceof Words words ? words.text() : "";
  }
}
