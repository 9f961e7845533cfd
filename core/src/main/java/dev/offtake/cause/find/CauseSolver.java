package dev.offtake.cause.find;

import dev.offtake.study.Broken;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Solves one cause to many extents, each from the nearest that was solved before. Belongs to one
 * thread.
 */
final class CauseSolver {
  private final Cause cause;
  private final Forecaster forecaster;
  private final List<Scene> scenes;
  private final Broken broken;
  private final List<Solved> solved = new ArrayList<>();

  /** A place with its states. */
  private record Solved(double[] place, List<SceneState> states) {
    double from(double[] other) {
      double far = 0;
      for (int i = 0; i < other.length; i++) {
        far = Math.max(far, Math.abs(other[i] - place[i]));
      }
      return far;
    }
  }

  private CauseSolver(
      Cause cause,
      Forecaster forecaster,
      List<Scene> scenes,
      List<SceneState> healthy,
      Broken broken) {
    this.cause = cause;
    this.forecaster = forecaster;
    this.scenes = scenes;
    this.broken = broken;
    solved.add(new Solved(new double[cause.extents()], healthy));
  }

  /**
   * Prepares.
   *
   * @param healthy the scenes of a sound system
   * @return empty where the failures cannot be there together
   */
  static Optional<CauseSolver> of(
      Cause cause, Forecaster forecaster, List<Scene> scenes, List<SceneState> healthy) {
    try {
      Broken broken = forecaster.broken(cause.faults());
      return Optional.of(new CauseSolver(cause, forecaster, scenes, healthy, broken));
    } catch (Broken.Contradiction impossible) {
      return Optional.empty();
    }
  }

  private List<SceneState> nearest(double... place) {
    return solved.stream()
        .min(Comparator.comparingDouble(known -> known.from(place)))
        .orElseThrow()
        .states();
  }

  /**
   * The states of all scenes with something moved in each of them.
   *
   * @param place of the extents
   * @param moved changes each question
   * @return empty where one of them has no answer
   */
  Optional<List<SceneState>> states(double[] place, List<Moved> moved) {
    Broken there = broken.to(cause.at(place));
    List<SceneState> states = forecaster.states(there, scenes, nearest(place), moved);
    return states.stream().allMatch(SceneState::solved) ? Optional.of(states) : Optional.empty();
  }

  /** The states of all scenes; empty where one of them has none. */
  Optional<List<SceneState>> states(double... place) {
    List<SceneState> start = nearest(place);
    List<SceneState> states = forecaster.states(broken.to(cause.at(place)), scenes, start);
    if (!states.stream().allMatch(SceneState::solved)) {
      return Optional.empty();
    }
    solved.add(new Solved(Arrays.copyOf(place, place.length), states));
    return Optional.of(states);
  }
}
