package dev.offtake.logic;

import dev.offtake.quantity.Dimension;
import java.util.List;
import java.util.Optional;

/** What a condition may speak of: the switches, trips, lights, valves and values of a system. */
public interface Names {
  /**
   * The full name of what is written.
   *
   * @param written as in the file, words parted by single spaces, perhaps without its side
   * @return the full name, or nothing when there is no such switch, trip, light, valve or value
   */
  Optional<String> subject(String written);

  /**
   * The positions in which a subject can stand, as they are written in the file.
   *
   * @param subject full name
   * @return positions; empty when the subject is a value that is compared
   */
  List<String> positions(String subject);

  /**
   * What a value measures.
   *
   * @param subject full name of a value
   */
  Dimension dimension(String subject);

  /** All names that may be written, from which a misspelt one is guessed; may be left empty. */
  default List<String> all() {
    return List.of();
  }
}
