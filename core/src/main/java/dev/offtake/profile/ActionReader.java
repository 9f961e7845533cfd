package dev.offtake.profile;

import dev.offtake.study.Fault;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.Hint;
import dev.offtake.system.Item;
import dev.offtake.system.Item.Entry;
import dev.offtake.system.Item.Listing;
import dev.offtake.system.Item.Section;
import dev.offtake.system.Item.Words;
import dev.offtake.system.Problems;
import dev.offtake.system.Texts;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads what is done at a time. */
final class ActionReader {
  static final String CORE = "core";
  static final String ACCELERATE = "accelerate";
  static final String DECELERATE = "decelerate";
  static final String BREAKS = "breaks";
  static final String CONNECT = "connect";
  static final String REMOVE = "remove";
  static final String START_UP = "start up";
  static final String SHUT_DOWN = "shut down";

  /** Words with which an action begins, beside the names of switches and valves. */
  static final List<String> VERBS =
      List.of(CORE, ACCELERATE, DECELERATE, BREAKS, CONNECT, REMOVE, START_UP, SHUT_DOWN);

  private static final String WAY = ": ground idle -> take-off";

  private final BleedSystem system;
  private final Handles handles;
  private final StartReader starts;
  private final PowerReader powers;
  private final Schedule schedule;
  private final Problems problems;
  private final List<Action> actions = new ArrayList<>();

  ActionReader(
      BleedSystem system,
      Handles handles,
      StartReader starts,
      PowerReader powers,
      Schedule schedule,
      Problems problems) {
    this.system = system;
    this.handles = handles;
    this.starts = starts;
    this.powers = powers;
    this.schedule = schedule;
    this.problems = problems;
  }

  /** The actions so far, in the order of the file. */
  List<Action> actions() {
    return actions;
  }

  /** Reads a time with everything under it. */
  void read(Entry entry) {
    Moment.read(entry.name(), problems).ifPresent(moment -> all(moment, entry.value()));
  }

  private void all(Moment moment, Item item) {
    if (item instanceof Section section) {
      for (Entry entry : section.entries().values()) {
        each(moment, entry);
      }
    } else if (item instanceof Listing listing) {
      listing.items().forEach(one -> all(moment, one));
    } else if (item instanceof Words words) {
      line(moment, words);
    }
  }

  /** An action in one line: {@code left pack switch OFF}, {@code shut down}. */
  private void line(Moment moment, Words words) {
    List<String> known = new ArrayList<>(VERBS);
    known.addAll(handles.turnable());
    Optional<String> begun = Texts.begun(words.text(), known);
    if (begun.isEmpty()) {
      unknown(words);
      return;
    }
    String rest = words.text().substring(begun.get().length()).replaceFirst("^\\s*:", "");
    one(moment, Texts.at(words, begun.get()), Texts.at(words, rest));
  }

  private void each(Moment moment, Entry entry) {
    if (entry.value() instanceof Section) {
      String mend = "Write `" + entry.name().text() + ": …` in one line";
      problems.add(entry.value(), "Nothing stands deeper than an action", mend);
    } else if (entry.value() instanceof Listing) {
      starts.each(entry).forEach(words -> one(moment, entry.name(), words));
    } else if (entry.value() instanceof Words words) {
      one(moment, entry.name(), words);
    }
  }

  private void one(Moment moment, Words verb, Words said) {
    Words value = Texts.at(said, Texts.value(said.text()));
    String word = Texts.named(verb.text(), VERBS).orElse("");
    if (moment.until() > 0 && !word.equals(CORE) && !word.equals(SHUT_DOWN) && !ramp(word)) {
      String wrong = "`" + verb.text() + "` happens at once, not over a time";
      problems.add(verb, wrong, "Write `at " + seconds(moment.from()) + ":`");
    } else if (ramp(word) || word.equals(CORE)) {
      ramp(moment, word, verb, value);
    } else {
      atOnce(moment, word, verb, value);
    }
  }

  private static boolean ramp(String word) {
    return word.equals(ACCELERATE) || word.equals(DECELERATE);
  }

  private void atOnce(Moment moment, String word, Words verb, Words value) {
    double at = moment.from();
    int line = verb.line();
    switch (word) {
      case BREAKS -> {
        List<Fault> faults = starts.faults(value);
        faults.stream()
            .filter(fault -> fault.mode().rebuild() != null)
            .forEach(f -> built(value, f));
        actions.add(new Action.Breaks(at, line, faults));
      }
      case CONNECT, REMOVE ->
          handles
              .supply(value)
              .ifPresent(
                  supply -> actions.add(new Action.Hose(at, line, supply, word.equals(CONNECT))));
      case START_UP -> startUp(at, verb, value);
      case SHUT_DOWN -> shutDown(moment, verb, value);
      default -> turn(at, verb, value);
    }
  }

  private void built(Words value, Fault fault) {
    String wrong =
        "`" + fault.name() + "` is how it was put together, and cannot begin while it runs";
    problems.add(value, wrong, "Write it under `start:` as `broken: " + fault.name() + "`");
  }

  private void turn(double at, Words verb, Words value) {
    if (Texts.named(verb.text(), handles.turnable()).isEmpty()) {
      unknown(verb);
      return;
    }
    handles
        .turned(verb, value)
        .ifPresent(turn -> actions.add(new Action.Turn(at, verb.line(), turn.what(), turn.to())));
  }

  private void startUp(double at, Words verb, Words value) {
    Optional<Speeds> to =
        value.text().isEmpty()
            ? system.settings().values().stream().findFirst().map(powers::of)
            : powers.read(value);
    if (system.parts().stream().noneMatch(part -> part.kind().equals("starter"))) {
      String mend = "Give the system file a part of kind `starter`, or write `core: stopped -> …`";
      problems.add(verb, "The system has no starter", mend);
    } else if (to.isEmpty() && value.text().isEmpty()) {
      problems.add(verb, "Nothing says to which idle it starts", "Write `start up: 60 %`");
    } else {
      to.ifPresent(power -> actions.add(new Action.StartUp(at, verb.line(), power)));
    }
  }

  private void shutDown(Moment moment, Words verb, Words value) {
    if (!value.text().isEmpty()) {
      String mend = "Write `shut down:` alone; `from 60 s to 90 s:` says how long it runs down";
      problems.add(value, "`shut down` needs nothing after it", mend);
      return;
    }
    double until = moment.until() > 0 ? moment.until() : moment.from() + schedule.runDown();
    actions.add(new Action.ShutDown(moment.from(), verb.line(), Speeds.STOPPED, until));
  }

  private void ramp(Moment moment, String word, Words verb, Words value) {
    Optional<List<Speeds>> way = powers.way(value, verb.text() + WAY);
    if (way.isEmpty()) {
      return;
    }
    Speeds from = way.get().get(0);
    Speeds to = way.get().get(1);
    boolean up = to.core() > from.core();
    if (from.same(to) || (word.equals(ACCELERATE) && !up) || (word.equals(DECELERATE) && up)) {
      String does = from.same(to) ? "does not move" : up ? "speeds up" : "slows down";
      String wrong = "From " + from.name() + " to " + to.name() + " the core " + does;
      problems.add(value, wrong, "Check the two powers, or the word before them");
      return;
    }
    double until =
        moment.until() > 0 ? moment.until() : moment.from() + taken(verb, word, from, to);
    if (!Double.isNaN(until)) {
      actions.add(new Action.Ramp(moment.from(), verb.line(), until, from, to, word));
    }
  }

  private double taken(Words verb, String word, Speeds from, Speeds to) {
    Optional<Double> taken = word.equals(CORE) ? Optional.empty() : schedule.seconds(from, to);
    if (taken.isEmpty()) {
      String wrong = "Nothing says how long it takes from " + from.name() + " to " + to.name();
      problems.add(
          verb,
          wrong,
          "Write `from 4 s to 10 s:`, or give the time under `acceleration:` and write"
              + " `accelerate`");
    }
    return taken.orElse(Double.NaN);
  }

  private void unknown(Words verb) {
    List<String> known = new ArrayList<>(VERBS);
    known.addAll(handles.turnable());
    for (String side : system.sides()) {
      if (Texts.begun(side + " " + verb.text(), known).isPresent()) {
        String mend = "Say on which side: `" + side + " " + verb.text() + "`";
        problems.add(verb, "`" + verb.text() + "` does not say on which side", mend);
        return;
      }
    }
    String near = Hint.nearest(verb.text(), known);
    String mend =
        near.isEmpty()
            ? "Write a switch with its position, or " + String.join(", ", VERBS)
            : "Did you mean `" + near + "`?";
    problems.add(verb, "Nobody can do `" + verb.text() + "`", mend);
  }

  /** Seconds as a file writes them. */
  static String seconds(double s) {
    return BigDecimal.valueOf(s).stripTrailingZeros().toPlainString() + " s";
  }
}
