package dev.offtake.system;

import java.util.List;

/**
 * Statements about the same number that do not agree.
 *
 * @param subject full name of the part
 * @param key line of the file
 * @param statements all of them, the one in force first
 */
public record Conflict(String subject, String key, List<Statement> statements) {
  /** Keeps its list. */
  public Conflict {
    statements = List.copyOf(statements);
  }
}
