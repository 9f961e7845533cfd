package dev.offtake.solve;

import dev.offtake.part.Conditions;
import java.util.Map;

/**
 * What is asked of a network: how hard the engine works, the air it breathes, how things stand, and
 * what differs from the healthy system.
 *
 * @param conditions power and day
 * @param positions position of each switch, by its full name
 * @param locks {@code locked open}, {@code locked shut} or {@code removed and capped}, by the
 *     valve's full name
 * @param changed values that differ from the healthy ones, SI, by part and parameter
 */
public record Setup(
    Conditions conditions,
    Map<String, String> positions,
    Map<String, String> locks,
    Map<PartNumber, Double> changed) {

  /** A parameter of a part, by their names. */
  public record PartNumber(String part, String parameter) {}

  /** Keeps its maps. */
  public Setup {
    positions = Map.copyOf(positions);
    locks = Map.copyOf(locks);
    changed = Map.copyOf(changed);
  }

  /** A healthy system without switches. */
  public static Setup healthy(Conditions conditions) {
    return new Setup(conditions, Map.of(), Map.of(), Map.of());
  }

  /** The same question of the system with all numbers healthy. */
  public Setup healthy() {
    return new Setup(conditions, positions, locks, Map.of());
  }

  /** The same question under other conditions. */
  public Setup at(Conditions other) {
    return new Setup(other, positions, locks, changed);
  }
}
