package dev.offtake.cause;

import dev.offtake.system.BleedSystem;
import dev.offtake.system.Item.Words;
import dev.offtake.system.Problems;
import dev.offtake.system.Texts;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Reads readings in one line each: {@code ground idle, packs off: left duct 15 psig, right duct 22
 * psig, left bleed trip light off}. Before the first colon stands the head, after it the readings.
 */
final class LineReadings {
  /** How the command line is called in problems; the line is the number of the argument. */
  static final String FILE = "readings";

  /** The colon behind the head: the first with a space after it. */
  private static final Pattern COLON = Pattern.compile(":\\s");

  private final BleedSystem system;
  private final Problems problems;

  LineReadings(BleedSystem system, Problems problems) {
    this.system = system;
    this.problems = problems;
  }

  Readings read(List<String> lines) {
    Gauges gauges = new Gauges(system, false, problems);
    OccasionReader reader = new OccasionReader(system, gauges, Optional.empty(), problems);
    List<Occasion> occasions = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      Words line = new Words(FILE, i + 1, lines.get(i).strip());
      occasion(line, reader).ifPresent(occasions::add);
    }
    if (occasions.isEmpty() && problems.none()) {
      problems.add(FILE, 1, "Nothing is said of what was read", example());
    }
    return Readings.of(gauges.all(), occasions, List.of());
  }

  private String example() {
    String power = system.settings().keySet().stream().findFirst().orElse("core 62 %");
    return "Write the power, a colon and the readings: \"" + power + ": left duct 15 psig\"";
  }

  private Optional<Occasion> occasion(Words line, OccasionReader reader) {
    String[] halves = COLON.split(line.text() + " ", 2);
    if (line.text().isEmpty()) {
      problems.add(line, "Nothing is said of what was read", example());
      return Optional.empty();
    }
    if (halves.length < 2) {
      problems.add(line, "No colon stands between the power and the readings", example());
      return Optional.empty();
    }
    Head head = new Head(line);
    reader.heads().read(head, Texts.at(line, halves[0]));
    List<Entered> readings = new ArrayList<>();
    List<Words> pieces = Texts.pieces(Texts.at(line, halves[1]));
    pieces.forEach(piece -> readings.add(entered(piece, reader.names())));
    if (pieces.isEmpty()) {
      problems.add(line, "No reading follows the colon", example());
    }
    return reader.read(head, readings);
  }

  /** Name and value apart: the longest beginning that is a name, else all before a number. */
  private Entered entered(Words piece, NameReader names) {
    String text = piece.text();
    if (text.equalsIgnoreCase(OccasionReader.NOT_DUPLICATED)) {
      return Entered.of(piece, Texts.at(piece, ""));
    }
    Optional<String> control = Texts.begun(text, system.switches().keySet());
    int least = control.map(String::length).orElse(0);
    int end = text.length();
    while (end > least && !names.known(text.substring(0, end))) {
      end = text.lastIndexOf(' ', end - 1);
    }
    end = Math.max(end, least);
    if (end <= 0) {
      end = guess(text);
    }
    String value = text.substring(end).replaceFirst("^\\s*[:=]\\s*", "");
    return Entered.of(Texts.at(piece, text.substring(0, end)), Texts.at(piece, value));
  }

  /** Where the value probably begins when no name is known: at the first number or last word. */
  private static int guess(String text) {
    for (int i = 1; i < text.length(); i++) {
      if (Character.isDigit(text.charAt(i)) && " +-".indexOf(text.charAt(i - 1)) >= 0) {
        return text.charAt(i - 1) == ' ' ? i : i - 1;
      }
    }
    int space = text.lastIndexOf(' ');
    return space < 0 ? text.length() : space;
  }
}
