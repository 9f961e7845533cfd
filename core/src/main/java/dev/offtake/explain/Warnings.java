package dev.offtake.explain;

import dev.offtake.system.BleedSystem;
import dev.offtake.system.Problem;
import java.util.ArrayList;
import java.util.List;

/** What is said before an answer: numbers that are typical or unknown, and doubts of the file. */
final class Warnings {
  /**
   * Source by which a file marks a number that is usual in the trade and nobody's in particular.
   */
  private static final String USUAL_SOURCE = "common practice, no source";

  private Warnings() {}

  /**
   * Warnings.
   *
   * @param system what is asked about
   * @param eitherSpeed whether nobody said which speed is held where it makes a difference
   */
  static List<String> of(BleedSystem system, boolean eitherSpeed) {
    List<String> warnings = new ArrayList<>();
    long unknown =
        system.statements().stream().filter(s -> s.inForce() && s.stated().unknown()).count();
    long typical = typical(system);
    if (typical > 0) {
      warnings.add(
          typical
              + " TYPICAL NUMBERS, NOT YOUR ENGINE'S ("
              + USUAL_SOURCE
              + "). Look them up first.");
    }
    if (unknown > 0) {
      warnings.add(
          unknown == 1
              ? "1 number is unknown: the middle of its range is used."
              : unknown + " numbers are unknown: the middle of their range is used.");
    }
    if (eitherSpeed) {
      warnings.add(
          "The file does not say whether the engine holds physical or corrected speed here. The"
              + " answer for physical speed comes first, what differs at corrected speed after it. Write"
              + " `holds: physical` or `holds: corrected`.");
    }
    system.doubts().forEach(d -> warnings.add(d.wrong() + ". " + d.mend() + " " + at(d)));
    return warnings;
  }

  /** How many numbers in force are typical of the trade and nobody's in particular. */
  static long typical(BleedSystem system) {
    return system.statements().stream()
        .filter(s -> s.inForce() && s.stated().source().startsWith(USUAL_SOURCE))
        .count();
  }

  private static String at(Problem doubt) {
    return "(" + doubt.file() + ", line " + doubt.line() + ")";
  }
}
