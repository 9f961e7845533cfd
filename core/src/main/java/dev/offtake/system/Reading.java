package dev.offtake.system;

import java.util.List;
import java.util.Optional;

/**
 * What came out of reading a system file.
 *
 * @param system the system; empty when there is any problem
 * @param problems mistakes by line, at most {@value Problems#MOST}
 */
public record Reading(Optional<BleedSystem> system, List<Problem> problems) {
  /** Keeps its list. */
  public Reading {
    problems = List.copyOf(problems);
  }
}
