package dev.offtake.explain;

import java.util.List;

/**
 * What was asked, in words, and what the answer stands on.
 *
 * @param title of the system
 * @param about what the file says about itself; empty when nothing
 * @param power such as {@code ground idle, core 62 %}
 * @param day such as {@code standard day, sea level}
 * @param lineUp switches that matter, in words
 * @param sides names of the sides; empty when the system has none
 * @param standsOn one sentence on numbers, papers and assumptions
 * @param assumes what was taken for granted to put the question, a sentence each
 * @param warnings said before the answer, such as that the numbers are typical ones only
 * @param broken what has failed, such as {@code left mid check valve stuck 33 % open}; empty for
 *     the healthy system
 */
public record Asked(
    String title,
    String about,
    String power,
    String day,
    String lineUp,
    List<String> sides,
    String standsOn,
    List<String> assumes,
    List<String> warnings,
    List<String> broken) {
  /** Keeps its lists. */
  public Asked {
    sides = List.copyOf(sides);
    assumes = List.copyOf(assumes);
    warnings = List.copyOf(warnings);
    broken = List.copyOf(broken);
  }
}
