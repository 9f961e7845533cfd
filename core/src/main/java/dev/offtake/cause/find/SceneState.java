package dev.offtake.cause.find;

import dev.offtake.solve.Solution;
import java.util.Map;

/**
 * A scene as a cause makes it.
 *
 * @param seen the state in which things were read
 * @param before the state before any trip: the same where nothing trips
 * @param there whether the cause lets it come to that at all
 * @param moving whether it is an instant of a run, not a state at rest
 * @param waves how what was recorded swings, by its name, where a stretch of a run is looked at
 */
record SceneState(
    Solution seen, Solution before, boolean there, boolean moving, Map<String, Wave> waves) {
  /** An instant of a run, or a state at rest. */
  SceneState(Solution seen, Solution before, boolean there, boolean moving) {
    this(seen, before, there, moving, Map.of());
  }

  SceneState(Solution seen, Solution before) {
    this(seen, before, seen.solved() && before.solved(), false);
  }

  boolean solved() {
    return there;
  }
}
