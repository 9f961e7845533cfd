package dev.offtake.explain;

import dev.offtake.cause.find.Scene;
import dev.offtake.solve.Setup;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.LineUp;
import dev.offtake.system.Setting;
import dev.offtake.system.Standing;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * How a scene of a named power is written at the head of an occasion, so that readings of it stand
 * where they were taken.
 *
 * @param lineUp line-up of the file in which everything stands so; empty for the power's own
 * @param set switches and valves that stand differently from that, with their positions
 */
record SceneHead(String lineUp, Map<String, String> set) {
  private static final LineUp AS_IT_IS = new LineUp(LineUp.USUAL, Map.of(), Map.of());

  /** Keeps its map in order. */
  SceneHead {
    set = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(set));
  }

  /**
   * Finds the words.
   *
   * @param system of the scene
   * @param scene of a power of the file
   */
  static SceneHead of(BleedSystem system, Scene scene) {
    Setting power = system.settings().get(scene.power());
    if (power == null) {
      return new SceneHead("", Map.of());
    }
    Optional<LineUp> same =
        system.lineUps().values().stream()
            .filter(lineUp -> !lineUp.name().equals(LineUp.USUAL))
            .filter(lineUp -> moved(Standing.of(system, power, lineUp), scene.setup()).isEmpty())
            .findFirst();
    Map<String, String> moved = moved(Standing.of(system, power, AS_IT_IS), scene.setup());
    return same.isPresent() && !moved.isEmpty()
        ? new SceneHead(same.get().name(), Map.of())
        : new SceneHead("", moved);
  }

  /** What stands differently from a line-up. */
  private static Map<String, String> moved(Standing from, Setup to) {
    Map<String, String> moved = new LinkedHashMap<>();
    to.positions().forEach((name, at) -> put(moved, name, at, from.positions().get(name)));
    to.locks().forEach((name, at) -> put(moved, name, at, from.locks().get(name)));
    return moved;
  }

  private static void put(
      Map<String, String> moved,
      String name,
      String at,
      @org.jspecify.annotations.Nullable String before) {
    if (!at.equals(before)) {
      moved.put(name, at);
    }
  }
}
