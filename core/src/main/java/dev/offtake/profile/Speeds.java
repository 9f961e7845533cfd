package dev.offtake.profile;

/**
 * A power as a profile names it.
 *
 * @param name as written, such as {@code take-off} or {@code 85 %}
 * @param core physical core speed, a fraction
 * @param fan physical fan speed, a fraction
 */
public record Speeds(String name, double core, double fan) {
  /** An engine that does not turn. */
  public static final Speeds STOPPED = new Speeds("stopped", 0, 0);

  /** Core speeds that differ by less are the same, a fraction. */
  private static final double SAME = 5e-4;

  /** Whether another power turns the core as fast. */
  public boolean same(Speeds other) {
    return Math.abs(core - other.core) < SAME;
  }

  /** Whether the engine does not turn. */
  public boolean stopped() {
    return core == 0;
  }
}
