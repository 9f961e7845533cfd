package dev.offtake.cause;

import dev.offtake.system.Problem;
import java.util.List;
import java.util.Optional;

/**
 * What came out of reading readings.
 *
 * @param readings the readings; empty when there is any problem
 * @param problems mistakes by line
 */
public record ReadingsRead(Optional<Readings> readings, List<Problem> problems) {
  /** Keeps its list. */
  public ReadingsRead {
    problems = List.copyOf(problems);
  }
}
