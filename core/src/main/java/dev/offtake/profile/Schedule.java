package dev.offtake.profile;

import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.QuantityReader;
import dev.offtake.quantity.Stated;
import dev.offtake.system.Hint;
import dev.offtake.system.Item;
import dev.offtake.system.Item.Entry;
import dev.offtake.system.Item.Section;
import dev.offtake.system.Item.Words;
import dev.offtake.system.Problems;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * How long the core takes from one power to another: a line of the profile for these two powers,
 * else the time that is common practice from an idle or back to it.
 */
final class Schedule {
  static final String ACCELERATION = "acceleration";
  static final String START_UP = "start-up";

  private final PowerReader powers;
  private final Problems problems;
  private final Map<String, Stated> given = new LinkedHashMap<>();
  private final List<Line> lines = new ArrayList<>();
  private final Set<String> assumes = new LinkedHashSet<>();

  /** A time between two powers that the profile gives. */
  private record Line(Speeds from, Speeds to, Stated time) {}

  Schedule(PowerReader powers, Problems problems) {
    this.powers = powers;
    this.problems = problems;
  }

  /** Reads both sections. */
  void read(Section acceleration, Section startUp) {
    for (Entry entry : acceleration.entries().values()) {
      if (entry.name().text().contains("->") || entry.name().text().contains("→")) {
        line(entry);
      } else {
        input(entry, Inputs.TIMES, ACCELERATION);
      }
    }
    startUp.entries().values().forEach(entry -> input(entry, Inputs.START_UP, START_UP));
  }

  private void line(Entry entry) {
    Optional<List<Speeds>> way = powers.way(entry.name(), "ground idle -> take-off: 6 s");
    Words said = words(entry);
    try {
      Stated time = QuantityReader.read(said.text(), Dimension.TIME);
      if (!(time.low() > 0) || time.high() > Moment.LONGEST) {
        String wrong = "No engine takes `" + said.text() + "` from one power to another";
        problems.add(said, wrong, "Write seconds: `6 s`, or `unknown 5..8 s`");
      } else {
        way.ifPresent(ends -> lines.add(new Line(ends.get(0), ends.get(1), time)));
      }
    } catch (QuantityProblem problem) {
      problems.add(said, problem.wrong(), problem.mend());
    }
  }

  private void input(Entry entry, List<Input> known, String section) {
    String key = entry.name().text();
    Optional<Input> input = known.stream().filter(one -> one.key().equals(key)).findFirst();
    if (input.isEmpty()) {
      String mend = Hint.of(key, known.stream().map(Input::key).toList());
      problems.add(entry.name(), "`" + section + "` has no line `" + key + "`", mend);
      return;
    }
    Words said = words(entry);
    try {
      given.put(key, input.get().read(said.text()));
    } catch (QuantityProblem problem) {
      problems.add(said, problem.wrong(), problem.mend());
    }
  }

  private Words words(Entry entry) {
    if (entry.value() instanceof Words words) {
      return words;
    }
    Item value = entry.value();
    problems.add(value, "`" + entry.name().text() + "` needs one value", "Write `name: value`");
    return new Words(value.file(), value.line(), "unknown");
  }

  /** What the profile gives. */
  Inputs inputs() {
    return new Inputs(given);
  }

  /** What was taken because nobody said it, a sentence each. */
  List<String> assumes() {
    return List.copyOf(assumes);
  }

  /** How long it takes from one power to another, s; empty where nobody says it. */
  Optional<Double> seconds(Speeds from, Speeds to) {
    for (Line line : lines) {
      if (line.from().same(from) && line.to().same(to)) {
        if (line.time().low() < line.time().high()) {
          assumes.add(
              Inputs.sentence(
                  from.name() + " to " + to.name(), line.time(), "as the profile says"));
        }
        return Optional.of(line.time().nominal());
      }
    }
    return usual(from, to).map(input -> taken(input));
  }

  /** The time for a run-down, s. */
  double runDown() {
    return taken(Inputs.RUN_DOWN);
  }

  private double taken(Input input) {
    Stated value = inputs().of(input);
    boolean said = given.containsKey(input.key());
    if (!said || value.low() < value.high()) {
      String by = said ? "as the profile says" : Inputs.PRACTICE;
      assumes.add(Inputs.sentence(input.says(), value, by));
    }
    return value.nominal();
  }

  private static Optional<Input> usual(Speeds from, Speeds to) {
    String name = from.name().toLowerCase(Locale.ROOT);
    boolean up = to.core() > from.core();
    if (up && name.contains("ground idle")) {
      return Optional.of(Inputs.GROUND_IDLE_TO_FULL);
    }
    if (up && (name.contains("flight idle") || name.contains("approach idle"))) {
      return Optional.of(Inputs.FLIGHT_IDLE_TO_FULL);
    }
    boolean idle = to.name().toLowerCase(Locale.ROOT).contains("idle");
    return !up && idle ? Optional.of(Inputs.FULL_TO_IDLE) : Optional.empty();
  }
}
