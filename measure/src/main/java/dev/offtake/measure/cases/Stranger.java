package dev.offtake.measure.cases;

import java.util.Arrays;
import java.util.List;

/**
 * A failure that is on no list.
 *
 * @param name what it is called here
 * @param means what has happened, one sentence
 * @param accepted parts that a fair judge would take for an answer, with {@code SIDE} and {@code
 *     OTHER} for the sides
 */
public record Stranger(String name, String means, List<String> accepted) {
  /** Keeps its list. */
  public Stranger {
    accepted = List.copyOf(accepted);
  }

  /** Reads a line of the list. */
  static Stranger of(String line) {
    String[] cells = line.split("\\|", -1);
    return new Stranger(
        cells[0], cells[1], Arrays.stream(cells[2].split(",", -1)).map(String::strip).toList());
  }

  /** The accepted parts of a side. */
  List<String> accepted(Side side) {
    return accepted.stream()
        .map(part -> part.replace("SIDE", side.word()).replace("OTHER", side.other().word()))
        .toList();
  }
}
