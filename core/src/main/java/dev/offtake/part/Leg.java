package dev.offtake.part;

/**
 * A way for air through a part, as drawn: the order and number equal those of the part's branches.
 *
 * @param from full name of a point; empty for a source of the part's own
 * @param to full name of a point
 * @param bore inner diameter, m; NaN when not known
 * @param bothWays whether air is meant to flow either way
 */
public record Leg(String from, String to, double bore, boolean bothWays) {
  /** The name under which the air outside is known. */
  public static final String AMBIENT = "ambient";

  /** Whether the leg begins at a source of the part's own, such as a compressor stage. */
  public boolean fromSource() {
    return from.isEmpty();
  }
}
