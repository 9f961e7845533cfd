package dev.offtake.part;

import java.util.List;

/** The kinds of parts, one line each. */
public final class Kinds {
  private Kinds() {}

  /** All kinds in the order in which they are listed to people. */
  public static List<Kind> all() {
    return List.of();
  }
}
