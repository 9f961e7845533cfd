package dev.offtake.measure.cases;

import java.util.List;
import java.util.Locale;

/**
 * What is really wrong.
 *
 * @param kind healthy, on the list or a stranger
 * @param part full name of the part, or the side of a stranger; empty when healthy
 * @param mode name of the mode or of the stranger; empty when healthy
 * @param extent how far, SI; 1 without an extent
 * @param accepted parts that a judge accepts; the part itself for a listed mode, empty when healthy
 */
public record Truth(Kind kind, String part, String mode, double extent, List<String> accepted) {
  /** Where it comes from. */
  public enum Kind {
    /** Nothing is wrong. */
    HEALTHY,
    /** A mode that Offtake lists. */
    LISTED,
    /** A failure that Offtake does not list. */
    STRANGER
  }

  /** Keeps its list. */
  public Truth {
    accepted = List.copyOf(accepted);
  }

  /** Nothing is wrong. */
  static Truth healthy() {
    return new Truth(Kind.HEALTHY, "", "", 1, List.of());
  }

  /** For people. */
  public String words() {
    return kind == Kind.HEALTHY
        ? "healthy"
        : String.format(Locale.ROOT, "%s %s, extent %.4g", part, mode, extent);
  }
}
