package dev.offtake.cause;

import dev.offtake.system.Problem;
import java.util.List;
import java.util.Optional;

/**
 * What came out of reading a recording.
 *
 * @param recording the recording; empty when there is any problem
 * @param problems mistakes by line
 */
public record RecordingRead(Optional<Recording> recording, List<Problem> problems) {
  /** Keeps its list. */
  public RecordingRead {
    problems = List.copyOf(problems);
  }
}
