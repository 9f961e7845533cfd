package dev.offtake.network;

/**
 * A point of a network as described.
 *
 * @param name full name
 * @param wall conductance to the surroundings, W/K
 * @param volume of the air in it, m³
 */
public record PointSpec(String name, double wall, double volume) {
  /** Conductance to the surroundings where nothing is known, W/K: an assumption. */
  public static final double USUAL_WALL = 0.5;

  /** Volume where nothing is known, m³: an assumption; steady answers do not depend on it. */
  public static final double USUAL_VOLUME = 0.01;

  /** A point of which nothing but the name is known. */
  public static PointSpec named(String name) {
    return new PointSpec(name, USUAL_WALL, USUAL_VOLUME);
  }
}
