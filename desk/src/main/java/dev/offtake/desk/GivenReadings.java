package dev.offtake.desk;

import dev.offtake.cause.Readings;
import dev.offtake.cause.ReadingsRead;
import dev.offtake.cause.ReadingsReader;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.system.BleedSystem;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/**
 * Readings as they are given on the command line: one file, or lines.
 *
 * @param texts as typed
 */
record GivenReadings(List<String> texts) {
  private static final List<String> FILES = List.of(".yaml", ".yml", ".csv");

  /** Keeps its list. */
  GivenReadings {
    texts = List.copyOf(texts);
  }

  /**
   * Reads them.
   *
   * @throws QuantityProblem when a file stands among other readings
   */
  ReadingsRead read(BleedSystem system) throws QuantityProblem {
    List<String> files = texts.stream().filter(GivenReadings::isFile).toList();
    if (files.isEmpty()) {
      return ReadingsReader.readLines(texts, system);
    }
    if (texts.size() > 1) {
      throw new QuantityProblem(
          "\"" + files.get(0) + "\" does not go with other readings",
          "give one file, or only lines in quotes");
    }
    return ReadingsReader.read(Path.of(files.get(0)), system);
  }

  /** Name of the file without its folders; {@code readings} for lines. */
  String name() {
    boolean file = texts.size() == 1 && isFile(texts.get(0));
    return file ? lastName(texts.get(0)) : "readings";
  }

  /** A line has a colon; a file its ending. */
  private static boolean isFile(String text) {
    String name = text.toLowerCase(Locale.ROOT);
    return FILES.stream().anyMatch(name::endsWith);
  }

  /** What has to be said when readings name another system than the one that is given. */
  static List<String> notes(Readings readings, Path system) {
    String given = lastName(system.toString());
    String said = lastName(readings.system());
    return said.isEmpty() || said.equals(given)
        ? List.of()
        : List.of(
            "The readings are of "
                + said
                + ", the system you gave is "
                + given
                + ": make sure that they belong together.");
  }

  /** A file name without its folders, whichever computer it was written on. */
  private static String lastName(String file) {
    return file.substring(1 + Math.max(file.lastIndexOf('/'), file.lastIndexOf('\\')));
  }
}
