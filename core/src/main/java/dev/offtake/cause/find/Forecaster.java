package dev.offtake.cause.find;

import dev.offtake.cause.TripMoment;
import dev.offtake.part.Trip;
import dev.offtake.solve.Setup;
import dev.offtake.solve.Solution;
import dev.offtake.study.Bench;
import dev.offtake.study.Broken;
import dev.offtake.study.Fault;
import dev.offtake.system.BleedSystem;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** Solves scenes as a cause makes them. Belongs to one thread. */
final class Forecaster {
  private static final String FALSELY = "false";

  private final BleedSystem system;
  private final Bench bench;
  private final Rerun rerun;

  Forecaster(BleedSystem system) {
    this.system = system;
    bench = new Bench(system.network());
    rerun = new Rerun(system);
  }

  /**
   * Breaks the system.
   *
   * @param faults what has failed
   * @throws Broken.Contradiction when the failures cannot be there together
   */
  Broken broken(List<Fault> faults) {
    return Broken.of(system.network(), system.sides(), faults);
  }

  /** Solves scenes of the sound system. */
  List<SceneState> sound(List<Scene> scenes) {
    return states(broken(List.of()), scenes, List.of());
  }

  /**
   * Solves scenes.
   *
   * @param broken what has failed
   * @param scenes what is asked
   * @param starts a state to start from for each scene
   * @return a state for each scene, solved or not
   */
  List<SceneState> states(Broken broken, List<Scene> scenes, List<SceneState> starts) {
    return states(broken, scenes, starts, Collections.nCopies(scenes.size(), Moved.NOTHING));
  }

  /**
   * Solves scenes with something moved; a recording is played once for all of its instants.
   *
   * @param moved changes each question
   */
  List<SceneState> states(
      Broken broken, List<Scene> scenes, List<SceneState> starts, List<Moved> moved) {
    List<SceneState> states = new ArrayList<>();
    while (states.size() < scenes.size()) {
      int i = states.size();
      List<Instant> run = run(scenes, i);
      if (!run.isEmpty()) {
        states.addAll(rerun.states(broken.faults(), run, moved.get(i)));
        continue;
      }
      Optional<Solution> start =
          starts.isEmpty() ? Optional.empty() : Optional.of(starts.get(i).before());
      states.add(state(broken, scenes.get(i), start, moved.get(i)));
    }
    return states;
  }

  /** Instants of the same recording from a scene on; none where it is at rest. */
  private static List<Instant> run(List<Scene> scenes, int from) {
    List<Instant> run = new ArrayList<>();
    for (int i = from; i < scenes.size(); i++) {
      Optional<Instant> instant = scenes.get(i).instant();
      if (instant.isEmpty() || !(run.isEmpty() || same(run.get(0), instant.get()))) {
        break;
      }
      run.add(instant.get());
    }
    return run;
  }

  private static boolean same(Instant one, Instant other) {
    return one.recording().equals(other.recording());
  }

  private SceneState state(Broken broken, Scene scene, Optional<Solution> start, Moved moved) {
    Setup asked = moved.setup(scene.setup());
    Solution free = bench.solve(broken, asked, start);
    Solution before = free.outcome().before().orElse(free);
    return switch (scene.trip().when()) {
      case NONE -> new SceneState(free, before);
      case BEFORE -> new SceneState(before, before);
      case RESET_HELD -> new SceneState(tripped(free, scene).isEmpty() ? free : before, before);
      case AFTER, TRIPPED_AGAIN ->
          new SceneState(after(broken, scene, asked, free, before), before);
    };
  }

  /** Trips of the kind that was spoken of that stand tripped. */
  private List<Trip> tripped(Solution state, Scene scene) {
    return trips(system, scene.trip()).stream()
        .filter(trip -> state.is(trip.name(), "tripped"))
        .toList();
  }

  /** Trips that somebody may have meant. */
  static List<Trip> trips(BleedSystem system, TripMoment moment) {
    return system.parts().stream()
        .filter(Trip.class::isInstance)
        .map(Trip.class::cast)
        .filter(trip -> moment.trip().isEmpty() || trip.name().equals(moment.trip()))
        .toList();
  }

  /** The state with the trip latched, whether the cause would have brought it about or not. */
  private Solution after(Broken broken, Scene scene, Setup asked, Solution free, Solution before) {
    List<Trip> meant = trips(system, scene.trip());
    if (meant.isEmpty() || !tripped(free, scene).isEmpty()) {
      return free;
    }
    Trip trip = meant.get(0);
    List<Fault> faults = new ArrayList<>(broken.faults());
    faults.removeIf(fault -> fault.part().name().equals(trip.name()));
    system.modes(trip).stream()
        .filter(mode -> mode.name().equals(FALSELY))
        .forEach(mode -> faults.add(Fault.usual(trip, mode)));
    Broken latched = Broken.of(system.network(), system.sides(), faults);
    return bench.solve(latched, asked, Optional.of(before));
  }
}
