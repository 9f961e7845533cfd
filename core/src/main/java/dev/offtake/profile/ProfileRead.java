package dev.offtake.profile;

import dev.offtake.system.Problem;
import java.util.List;
import java.util.Optional;

/**
 * What came out of reading a profile.
 *
 * @param profile the profile; empty when there is any problem
 * @param problems mistakes by line
 */
public record ProfileRead(Optional<Profile> profile, List<Problem> problems) {
  /** Keeps its list. */
  public ProfileRead {
    problems = List.copyOf(problems);
  }
}
