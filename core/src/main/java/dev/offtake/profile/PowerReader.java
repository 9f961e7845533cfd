package dev.offtake.profile;

import dev.offtake.air.Day;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.QuantityReader;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.FanLine;
import dev.offtake.system.Hint;
import dev.offtake.system.Item.Words;
import dev.offtake.system.Problems;
import dev.offtake.system.Setting;
import dev.offtake.system.Texts;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads powers: a setting of the system, a core speed, or {@code stopped}. */
final class PowerReader {
  private static final double FASTEST = 1.3;
  private static final Pattern CORE =
      Pattern.compile("(?i)(?:N2|core speed|core)?\\s*[:=]?\\s*([-+]?[0-9.].*)");
  private static final Pattern WAY = Pattern.compile("\\s*(?:->|→)\\s*|\\s+to\\s+");

  private final BleedSystem system;
  private final Day day;
  private final Problems problems;

  /**
   * Makes a reader.
   *
   * @param day of the whole profile, by which corrected speeds become physical ones
   */
  PowerReader(BleedSystem system, Day day, Problems problems) {
    this.system = system;
    this.day = day;
    this.problems = problems;
  }

  /** Two powers with an arrow between them; empty with a problem told. */
  Optional<List<Speeds>> way(Words words, String example) {
    String[] ends = WAY.split(words.text(), -1);
    if (ends.length != 2 || ends[0].isBlank() || ends[1].isBlank()) {
      String wrong = words.text().isEmpty() ? "Nothing" : "`" + words.text() + "`";
      problems.add(words, wrong + " says from which power to which", "Write `" + example + "`");
      return Optional.empty();
    }
    Optional<Speeds> from = read(Texts.at(words, ends[0]));
    Optional<Speeds> to = read(Texts.at(words, ends[1]));
    return from.isPresent() && to.isPresent()
        ? Optional.of(List.of(from.get(), to.get()))
        : Optional.empty();
  }

  /** One power; empty with a problem told. */
  Optional<Speeds> read(Words words) {
    String text = words.text();
    if (text.equalsIgnoreCase(Speeds.STOPPED.name())) {
      return Optional.of(Speeds.STOPPED);
    }
    Optional<String> name = Texts.named(text, system.settings().keySet());
    if (name.isPresent()) {
      return Optional.ofNullable(system.settings().get(name.get())).map(this::of);
    }
    Matcher core = CORE.matcher(text);
    if (core.matches()) {
      return speed(words, core.group(1));
    }
    List<String> known = new ArrayList<>(system.settings().keySet());
    known.add(Speeds.STOPPED.name());
    problems.add(words, "There is no power setting `" + text + "`", Hint.of(text, known));
    return Optional.empty();
  }

  /** Physical speeds of a setting on the day; a fan without a speed turns like the core. */
  Speeds of(Setting setting) {
    boolean corrected = setting.holds() == Setting.Holds.CORRECTED;
    double core = corrected ? day.physicalSpeed(setting.core()) : setting.core();
    double fan = Double.isNaN(setting.fan()) ? setting.core() : setting.fan();
    return new Speeds(setting.name(), core, corrected ? day.physicalSpeed(fan) : fan);
  }

  private Optional<Speeds> speed(Words words, String number) {
    try {
      double core = QuantityReader.read(number, Dimension.SHARE).nominal();
      if (core >= 0 && core <= FASTEST) {
        return Optional.of(new Speeds(number, core, fan(core)));
      }
      problems.add(
          words, "No engine runs at " + words.text(), "Give the speed in % of 100 % speed");
    } catch (QuantityProblem problem) {
      problems.add(words, problem.wrong(), problem.mend());
    }
    return Optional.empty();
  }

  /** Fan speed at a core speed: the line of the file's settings, and straight to 0 below them. */
  double fan(double core) {
    FanLine line = FanLine.of(system);
    if (line.settings().isEmpty()) {
      return core;
    }
    double least = line.settings().get(0).core();
    return core >= least ? line.fan(core) : line.fan(least) * core / least;
  }
}
