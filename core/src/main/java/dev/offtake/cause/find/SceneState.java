package dev.offtake.cause.find;

import dev.offtake.solve.Solution;

/**
 * A scene as a cause makes it.
 *
 * @param seen the state in which things were read
 * @param before the state before any trip: the same where nothing trips
 */
record SceneState(Solution seen, Solution before) {
  boolean solved() {
    return seen.solved() && before.solved();
  }
}
