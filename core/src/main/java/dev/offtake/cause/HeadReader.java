package dev.offtake.cause;

import dev.offtake.part.Part;
import dev.offtake.part.Role;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.QuantityReader;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.Hint;
import dev.offtake.system.Item.Words;
import dev.offtake.system.LineUp;
import dev.offtake.system.Problems;
import dev.offtake.system.Texts;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads when and how something was read.
 *
 * <pre>
 *   head  = piece { "," piece }
 *   piece = power | speed | line-up | day | switch position | valve lock
 *         | ( "before" | "after" ) trip | "reset held" | "tripped again" | "crew"
 *   speed = [ "core" | "N2" ] percent | ( "fan" | "N1" ) percent
 * </pre>
 */
final class HeadReader {
  static final String HELD = "reset held";
  static final String AGAIN = "tripped again";
  static final String CREW = "crew";

  /** No engine turns faster, as a share of 100 %. */
  private static final double FASTEST = 1.3;

  private static final Pattern CORE =
      Pattern.compile("(?i)(?:N2|core speed|core)?\\s*[:=]?\\s*([-+]?[0-9.].*)");
  private static final Pattern FAN =
      Pattern.compile("(?i)(?:N1|fan speed|fan)\\s*[:=]?\\s*([-+]?[0-9.].*)");
  private static final Pattern TRIP =
      Pattern.compile("(?i)(before|after)\\b(?: (?:a|the)\\b)?(.*)");
  private static final List<String> LOCKS =
      Arrays.stream(LineUp.Lock.values()).map(LineUp.Lock::words).toList();

  private final BleedSystem system;
  private final Problems problems;
  private final List<String> valves;
  private final List<String> trips;

  HeadReader(BleedSystem system, Problems problems) {
    this.system = system;
    this.problems = problems;
    List<Part> parts = system.parts();
    valves = parts.stream().filter(p -> p.role() == Role.VALVE).map(Part::name).toList();
    trips = parts.stream().filter(p -> p.kind().equals("trip")).map(Part::name).toList();
  }

  /** Reads a head that is written in one line. */
  void read(Head head, Words words) {
    Texts.pieces(words).forEach(piece -> piece(head, piece));
  }

  private void piece(Head head, Words piece) {
    String text = piece.text();
    Optional<String> power = Texts.named(text, system.settings().keySet());
    Matcher core = CORE.matcher(text);
    Matcher fan = FAN.matcher(text);
    if (power.isPresent()) {
      power(head, piece, power.get());
    } else if (core.matches()) {
      core(head, Texts.at(piece, core.group(1)));
    } else if (fan.matches()) {
      fan(head, Texts.at(piece, fan.group(1)));
    } else if (Texts.named(text, system.lineUps().keySet()).isPresent()) {
      lineUp(head, piece);
    } else if (Texts.named(text, system.days().keySet()).isPresent()) {
      head.day = new DayWords(system, problems).text(piece);
    } else if (text.equalsIgnoreCase(CREW) || text.equalsIgnoreCase("said by " + CREW)) {
      head.teller = Occasion.Teller.CREW;
    } else if (!trip(head, piece) && !control(head, piece)) {
      unknown(head, piece);
    }
  }

  private void power(Head head, Words at, String name) {
    if (head.powerSaid && head.power != null) {
      problems.add(at, "Two powers are given at once", "Keep one; each power is its own reading");
    }
    head.powerSaid = true;
    head.power = system.settings().get(name);
  }

  /** Reads the name of a power setting. */
  void power(Head head, Words words) {
    Optional<String> name = Texts.named(words.text(), system.settings().keySet());
    if (name.isPresent()) {
      power(head, words, name.get());
    } else {
      unknown(head, words);
    }
  }

  /** Reads the speed of the core. */
  void core(Head head, Words words) {
    head.powerSaid = true;
    head.core = speed(words);
  }

  /** Reads the speed of the fan. */
  void fan(Head head, Words words) {
    head.fan = speed(words);
  }

  private double speed(Words words) {
    try {
      double speed = QuantityReader.read(words.text(), Dimension.SHARE).nominal();
      if (speed >= 0 && speed <= FASTEST) {
        return speed;
      }
      String wrong = "No engine runs at " + words.text();
      problems.add(words, wrong, "Give the speed in % of 100 % speed");
    } catch (QuantityProblem problem) {
      problems.add(words, problem.wrong(), problem.mend());
    }
    return Double.NaN;
  }

  /** Reads the name of a line-up. */
  void lineUp(Head head, Words words) {
    Optional<String> name = Texts.named(words.text(), system.lineUps().keySet());
    if (name.isEmpty()) {
      String wrong = "There is no line-up `" + words.text() + "`";
      problems.add(words, wrong, Hint.of(words.text(), system.lineUps().keySet()));
    } else if (!head.lineUp.isEmpty() && !head.lineUp.equals(name.get())) {
      problems.add(words, "Two line-ups are given at once", "Keep one, and add single switches");
    } else {
      head.lineUp = name.get();
    }
  }

  /** Reads on which side of a trip it was; false when the words are about no trip. */
  boolean trip(Head head, Words piece) {
    String text = piece.text().toLowerCase(Locale.ROOT);
    if (text.equals(HELD) || text.equals(AGAIN)) {
      if (head.trip.when() == TripMoment.When.AFTER) {
        boolean held = text.equals(HELD);
        TripMoment.When when = held ? TripMoment.When.RESET_HELD : TripMoment.When.TRIPPED_AGAIN;
        head.trip = new TripMoment(when, head.trip.trip());
      } else {
        String wrong = "`" + text + "` does not follow a trip";
        problems.add(piece, wrong, "Write `after left overheat trip, " + text + "`");
      }
      return true;
    }
    Matcher matcher = TRIP.matcher(piece.text());
    if (!matcher.matches()) {
      return false;
    }
    boolean before = matcher.group(1).equalsIgnoreCase("before");
    TripMoment.When when = before ? TripMoment.When.BEFORE : TripMoment.When.AFTER;
    if (!head.trip.equals(TripMoment.NONE)) {
      String wrong = "Two sides of a trip are given at once";
      problems.add(piece, wrong, "Before and after a trip are two states: write two readings");
    }
    head.trip = new TripMoment(when, trip(Texts.at(piece, matcher.group(2))));
    return true;
  }

  private String trip(Words name) {
    if (name.text().isEmpty() || name.text().equalsIgnoreCase("trip")) {
      return "";
    }
    Optional<String> known = Texts.named(name.text(), trips);
    if (known.isEmpty()) {
      String wrong = "There is no trip `" + name.text() + "`";
      problems.add(name, wrong, sided(name.text(), trips));
    }
    return known.orElse("");
  }

  private boolean control(Head head, Words piece) {
    List<String> all = new ArrayList<>(system.switches().keySet());
    all.addAll(valves);
    Optional<String> name = Texts.begun(piece.text(), all);
    if (name.isEmpty()) {
      return false;
    }
    String rest = piece.text().substring(name.get().length()).replaceFirst("^\\s*(:|is )", "");
    set(head, Texts.at(piece, name.get()), Texts.at(piece, rest));
    return true;
  }

  /** Reads how one switch or valve stands. */
  void set(Head head, Words name, Words said) {
    Optional<String> control = Texts.named(name.text(), system.switches().keySet());
    Optional<String> valve = Texts.named(name.text(), valves);
    if (control.or(() -> valve).isEmpty()) {
      List<String> all = new ArrayList<>(system.switches().keySet());
      all.addAll(valves);
      String wrong = "There is no switch or valve `" + name.text() + "`";
      problems.add(name, wrong, sided(name.text(), all));
      return;
    }
    List<String> known =
        control.map(found -> system.switches().getOrDefault(found, List.of())).orElse(LOCKS);
    Optional<String> position = Texts.named(said.text(), known);
    if (position.isEmpty()) {
      String wrong = "`" + name.text() + "` cannot be `" + said.text() + "`";
      problems.add(said, wrong, Hint.of(said.text(), known));
    } else {
      head.set.put(control.or(() -> valve).get(), position.get());
    }
  }

  /** The side that is missing, else the nearest word. */
  private String sided(String text, List<String> known) {
    for (String side : system.sides()) {
      if (Texts.begun(side + " " + text, known).isPresent()) {
        return "Say on which side: `" + side + " " + text + "`";
      }
    }
    return Hint.of(text, known);
  }

  private void unknown(Head head, Words piece) {
    List<String> all = new ArrayList<>(system.settings().keySet());
    if (head.powerSaid) {
      all.addAll(system.lineUps().keySet());
      all.addAll(system.days().keySet());
      all.addAll(system.switches().keySet());
      String wrong = "`" + piece.text() + "` is no line-up, no switch position and no trip";
      problems.add(piece, wrong, sided(piece.text(), all));
    } else {
      String wrong = "There is no power setting `" + piece.text() + "`";
      problems.add(piece, wrong, Hint.of(piece.text(), all));
    }
    head.powerSaid = true;
  }
}
