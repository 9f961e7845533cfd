package dev.offtake.cause;

import dev.offtake.system.BleedSystem;
import dev.offtake.system.FileText;
import dev.offtake.system.Problems;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Reads readings, whichever way they come. Never throws for what a text says. */
public final class ReadingsReader {
  private static final String TABLE = ".csv";

  private ReadingsReader() {}

  /**
   * Reads a file: a table when its name ends with {@code .csv}, else YAML.
   *
   * @param file the readings
   * @param system what they are of
   */
  public static ReadingsRead read(Path file, BleedSystem system) {
    Path last = file.getFileName();
    String name = last == null || last.toString().isEmpty() ? file.toString() : last.toString();
    Problems problems = new Problems();
    String text = FileText.read(file, name, problems);
    return text == null ? done(Optional.empty(), problems) : text(name, text, system, problems);
  }

  /**
   * Reads a text: a table when its name ends with {@code .csv}, else YAML.
   *
   * @param name how the text is called in problems
   * @param text the readings
   * @param system what they are of
   */
  public static ReadingsRead readText(String name, String text, BleedSystem system) {
    Problems problems = new Problems();
    String checked = FileText.decode(text.getBytes(StandardCharsets.UTF_8), name, problems);
    return checked == null
        ? done(Optional.empty(), problems)
        : text(name, checked, system, problems);
  }

  private static ReadingsRead text(
      String name, String text, BleedSystem system, Problems problems) {
    boolean table = name.toLowerCase(Locale.ROOT).endsWith(TABLE);
    return done(
        table
            ? new CsvReadings(system, problems).read(name, text)
            : new YamlReadings(system, problems).read(name, text),
        problems);
  }

  /**
   * Reads occasions that are written in one line each.
   *
   * @param lines such as {@code ground idle, packs off: left duct 15 psig, right duct 22 psig}
   * @param system what they are of
   */
  public static ReadingsRead readLines(List<String> lines, BleedSystem system) {
    Problems problems = new Problems();
    Readings readings = new LineReadings(system, problems).read(lines);
    return done(Optional.of(readings), problems);
  }

  static ReadingsRead done(Optional<Readings> readings, Problems problems) {
    return new ReadingsRead(problems.none() ? readings : Optional.empty(), problems.sorted());
  }
}
