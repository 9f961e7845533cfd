package dev.offtake.cause;

import dev.offtake.air.Day;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.Item.Words;
import dev.offtake.system.LineUp;
import dev.offtake.system.Problems;
import dev.offtake.system.Setting;
import dev.offtake.system.Standing;
import dev.offtake.system.Texts;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Gives one occasion its meaning, whichever way it came. */
final class OccasionReader {
  /** Said of a complaint that did not come back. */
  static final String NOT_DUPLICATED = "could not duplicate";

  private final BleedSystem system;
  private final Problems problems;
  private final HeadReader heads;
  private final NameReader names;
  private final ValueReader values;
  private final Gauges gauges;
  private final Optional<SaidDay> common;

  /**
   * Makes a reader.
   *
   * @param system what the readings are of
   * @param gauges test gauges in use
   * @param common day of the readings; empty when they give none
   * @param problems takes what is wrong
   */
  OccasionReader(BleedSystem system, Gauges gauges, Optional<SaidDay> common, Problems problems) {
    this.system = system;
    this.problems = problems;
    this.gauges = gauges;
    this.common = common;
    heads = new HeadReader(system, problems);
    Vocabulary vocabulary = new Vocabulary(system);
    names = new NameReader(vocabulary, problems);
    values =
        new ValueReader(
            new Comparison(vocabulary, system.sides()), new Movement(system.switches()));
  }

  HeadReader heads() {
    return heads;
  }

  NameReader names() {
    return names;
  }

  /** The occasion; empty when nobody knows at which power. */
  Optional<Occasion> read(Head head, List<Entered> all) {
    List<Entered> rows = new ArrayList<>();
    for (Entered row : all) {
      if (row.name().text().equalsIgnoreCase(NOT_DUPLICATED)) {
        head.notDuplicated = true;
      } else if (Texts.named(row.name().text(), system.switches().keySet()).isPresent()) {
        heads.set(head, row.name(), row.value());
      } else {
        rows.add(row);
      }
    }
    Setting power = head.setting();
    Day day = day(head, power);
    List<Reading> readings = readings(rows, day);
    if (power == null) {
      if (!head.powerSaid) {
        String mend = "Begin with a power: " + String.join(", ", system.settings().keySet());
        problems.add(head.at, "Nothing says at which power this was read", mend);
      }
      return Optional.empty();
    }
    return Optional.of(
        new Occasion(
            power,
            head.lineUp,
            head.set,
            standing(head, power),
            head.day,
            day,
            head.trip,
            head.teller,
            head.notDuplicated,
            readings));
  }

  /** These readings' own day, that of the power, that of all readings, the standard day. */
  private Day day(Head head, @Nullable Setting power) {
    if (head.day.isPresent()) {
      return head.day.get().day();
    }
    if (power != null && (!power.day().isEmpty() || common.isEmpty())) {
      return system.dayOf(power);
    }
    return common.map(SaidDay::day).orElse(Day.STANDARD);
  }

  private Standing standing(Head head, Setting power) {
    String name = head.lineUp.isEmpty() ? LineUp.USUAL : head.lineUp;
    LineUp lineUp = Objects.requireNonNull(system.lineUps().get(name), "its name was found");
    Standing file = Standing.of(system, power, lineUp);
    Map<String, String> positions = new LinkedHashMap<>(file.positions());
    Map<String, String> locks = new LinkedHashMap<>(file.locks());
    head.set.forEach(
        (what, how) -> (positions.containsKey(what) ? positions : locks).put(what, how));
    return new Standing(positions, locks);
  }

  private List<Reading> readings(List<Entered> rows, Day day) {
    List<Reading> readings = new ArrayList<>();
    Set<About> told = new HashSet<>();
    for (Entered row : rows) {
      Optional<Reading> reading = reading(row, day);
      if (reading.isPresent() && !told.add(reading.get().about())) {
        String wrong = "`" + reading.get().about().name() + "` is read twice at once";
        problems.add(row.name(), wrong, "Keep one, or write the second as a reading of its own");
      }
      reading.ifPresent(readings::add);
    }
    return readings;
  }

  private Optional<Reading> reading(Entered row, Day day) {
    Optional<About> found = names.find(row);
    Optional<UsedGauge> with = gauges.find(row.with());
    if (found.isEmpty()) {
      return Optional.empty();
    }
    try {
      About about = about(found.get(), row.with(), with);
      Value value = values.read(about, row.value().text(), day, with);
      return Optional.of(new Reading(about, value, with, row.note()));
    } catch (QuantityProblem problem) {
      Words at = row.value();
      problems.add(at, names.told(row, problem.wrong()), problem.mend());
      return Optional.empty();
    }
  }

  private About about(About about, Words said, Optional<UsedGauge> with) throws QuantityProblem {
    if (with.isEmpty()) {
      return about;
    }
    if (!(about instanceof About.Scaled scaled)) {
      if (about instanceof About.Skin) {
        return about;
      }
      throw new QuantityProblem(
          "it is not read with a test gauge", "leave `with " + said.text() + "` out");
    }
    if (!with.get().measures(scaled.temperature())) {
      String what = scaled.temperature() ? "pressures" : "temperatures";
      String wrong = "`" + said.text() + "` measures " + what;
      throw new QuantityProblem(wrong, "name the gauge it was read with");
    }
    return names.fitted(scaled);
  }
}
