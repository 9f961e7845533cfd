package dev.offtake.cause.find;

import dev.offtake.study.Broken;
import java.util.ArrayList;
import java.util.Arrays;
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
  private final Outlook outlook;
  private final List<SceneState> healthy;
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
      Broken broken,
      Outlook outlook) {
    this.outlook = outlook;
    this.healthy = healthy;
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
    return of(cause, forecaster, scenes, healthy, Outlook.UNKNOWN);
  }

  /**
   * Prepares.
   *
   * @param healthy the scenes of a sound system
   * @param outlook to which extents a recording has to be played
   * @return empty where the failures cannot be there together
   */
  static Optional<CauseSolver> of(
      Cause cause,
      Forecaster forecaster,
      List<Scene> scenes,
      List<SceneState> healthy,
      Outlook outlook) {
    try {
      Broken broken = forecaster.broken(cause.faults());
      return Optional.of(new CauseSolver(cause, forecaster, scenes, healthy, broken, outlook));
    } catch (Broken.Contradiction impossible) {
      return Optional.empty();
    }
  }

  /**
   * States to start from: of those that are as near, the last, for the first are the sound ones.
   */
  private List<SceneState> nearest(double... place) {
    Solved best = solved.get(0);
    for (Solved known : solved) {
      if (known.from(place) <= best.from(place)) {
        best = known;
      }
    }
    return best.states();
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

  /**
   * As {@link #states(double[], List)}, but only where all states are easily come to.
   *
   * @return empty where one of them is not, or has no answer
   */
  Optional<List<SceneState>> nearby(double[] place, List<Moved> moved) {
    forecaster.nearby(true);
    try {
      return states(place, moved);
    } finally {
      forecaster.nearby(false);
    }
  }

  /** The states of all scenes; empty where one of them has none, or is passed over. */
  Optional<List<SceneState>> states(double... place) {
    Preview.Verdict verdict = outlook.at(place);
    if (verdict == Preview.Verdict.PAST) {
      return Optional.empty();
    }
    List<SceneState> start = nearest(place);
    List<SceneState> states =
        states(broken.to(cause.at(place)), start, verdict == Preview.Verdict.PLAY);
    if (!states.stream().allMatch(SceneState::solved)) {
      return Optional.empty();
    }
    solved.add(new Solved(Arrays.copyOf(place, place.length), states));
    return Optional.of(states);
  }

  private List<SceneState> states(Broken there, List<SceneState> start, boolean plays) {
    if (plays) {
      return forecaster.states(there, scenes, start);
    }
    List<SceneState> states = new ArrayList<>(healthy);
    for (int i = 0; i < states.size(); i++) {
      if (scenes.get(i).instant().isEmpty()) {
        states.set(
            i, forecaster.states(there, List.of(scenes.get(i)), List.of(start.get(i))).get(0));
      }
    }
    return states;
  }
}
