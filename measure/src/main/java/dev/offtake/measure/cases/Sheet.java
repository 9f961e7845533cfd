package dev.offtake.measure.cases;

import java.util.List;

/**
 * What was asked and what was told.
 *
 * @param schedule the run
 * @param told the words of each reading, by occasion and item
 */
public record Sheet(Schedule schedule, List<List<String>> told) {
  /** Keeps its lists. */
  public Sheet {
    told = told.stream().map(List::copyOf).toList();
  }
}
