package dev.offtake.profile;

import dev.offtake.air.Day;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.study.Fault;
import dev.offtake.study.FaultReader;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.Hint;
import dev.offtake.system.Item;
import dev.offtake.system.Item.Entry;
import dev.offtake.system.Item.Section;
import dev.offtake.system.Item.Words;
import dev.offtake.system.LineUp;
import dev.offtake.system.Problems;
import dev.offtake.system.Setting;
import dev.offtake.system.Standing;
import dev.offtake.system.Texts;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads how everything stands when a profile begins. */
final class StartReader {
  static final String POWER = "power";
  static final String DAY = "day";
  static final String LINE_UP = "line-up";
  static final String BROKEN = "broken";
  static final String REMOVED = "removed";

  /** Lines of the section; the others are switches and valves. */
  static final List<String> KEYS = List.of(POWER, DAY, LINE_UP, BROKEN, REMOVED);

  private final BleedSystem system;
  private final Handles handles;
  private final Problems problems;

  StartReader(BleedSystem system, Handles handles, Problems problems) {
    this.system = system;
    this.handles = handles;
    this.problems = problems;
  }

  /** How everything stands; where something is wrong, as if it were not said. */
  Start read(Section section) {
    Map<String, Entry> lines = section.entries();
    Words power = words(lines.get(POWER), section);
    Optional<Setting> named =
        Texts.named(power.text(), system.settings().keySet()).map(system.settings()::get);
    Optional<Setting> first = system.settings().values().stream().findFirst();
    Optional<Setting> setting = power.text().isEmpty() ? first : named;
    String dayName = day(lines.get(DAY), section, setting);
    Day day = air(dayName, words(lines.get(DAY), section));
    PowerReader powers = new PowerReader(system, day, problems);
    Speeds speeds = setting.map(powers::of).or(() -> powers.read(power)).orElse(Speeds.STOPPED);
    Standing standing = standing(lines.get(LINE_UP), section, setting);
    Map<String, String> positions = new LinkedHashMap<>(standing.positions());
    Map<String, String> locks = new LinkedHashMap<>(standing.locks());
    for (Entry entry : lines.values()) {
      if (!KEYS.contains(entry.name().text())) {
        Words to = words(entry, section);
        handles
            .turned(entry.name(), to)
            .ifPresent(
                turn ->
                    (positions.containsKey(turn.what()) ? positions : locks)
                        .put(turn.what(), turn.to()));
      }
    }
    List<Fault> faults = new ArrayList<>();
    each(lines.get(BROKEN)).forEach(words -> faults.addAll(faults(words)));
    List<String> removed = new ArrayList<>();
    each(lines.get(REMOVED)).forEach(words -> handles.supply(words).ifPresent(removed::add));
    return new Start(speeds, dayName, day, positions, locks, faults, removed);
  }

  private String day(@Nullable Entry entry, Item at, Optional<Setting> s) {
    String said = words(entry, at).text();
    if (!said.isEmpty()) {
      return Texts.named(said, system.days().keySet()).orElse(said);
    }
    String own = s.map(Setting::day).orElse("");
    return own.isEmpty() ? BleedSystem.STANDARD_DAY : own;
  }

  private Day air(String name, Words at) {
    Day named = system.days().get(name);
    try {
      return named == null ? BleedSystem.dayOf(name) : named;
    } catch (QuantityProblem problem) {
      problems.add(at, problem.wrong(), problem.mend());
      return Day.STANDARD;
    }
  }

  private Standing standing(@Nullable Entry entry, Item at, Optional<Setting> setting) {
    Words said = words(entry, at);
    String asked = said.text().isEmpty() ? LineUp.USUAL : said.text();
    Optional<String> name = Texts.named(asked, system.lineUps().keySet());
    if (name.isEmpty()) {
      String mend = Hint.of(asked, system.lineUps().keySet());
      problems.add(said, "There is no line-up `" + asked + "`", mend);
    }
    LineUp lineUp =
        Objects.requireNonNull(system.lineUps().get(name.orElse(LineUp.USUAL)), LineUp.USUAL);
    return Standing.of(system, setting.orElse(NONE), lineUp);
  }

  /** A power that brings no line-up. */
  private static final Setting NONE = new Setting("", 0, 0, Setting.Holds.PHYSICAL, "", "", "");

  /** Faults of one line; none with a problem told. */
  List<Fault> faults(Words words) {
    try {
      return new FaultReader(system).read(Texts.value(words.text()));
    } catch (QuantityProblem problem) {
      problems.add(words, problem.wrong(), problem.mend());
      return List.of();
    }
  }

  /** The words of a line, or of each line of a list. */
  List<Words> each(@Nullable Entry entry) {
    List<Words> all = new ArrayList<>();
    if (entry != null && entry.value() instanceof Item.Listing listing) {
      for (Item item : listing.items()) {
        all.add(plain(item));
      }
    } else if (entry != null) {
      all.add(plain(entry.value()));
    }
    all.removeIf(words -> words.text().isEmpty());
    return all;
  }

  private Words words(@Nullable Entry entry, Item otherwise) {
    return entry == null ? Texts.at(otherwise, "") : plain(entry.value());
  }

  private Words plain(Item item) {
    if (item instanceof Words words) {
      return Texts.at(words, Texts.value(words.text()));
    }
    problems.add(item, "Words are needed here, not " + item.words(), "Write one line");
    return Texts.at(item, "");
  }
}
