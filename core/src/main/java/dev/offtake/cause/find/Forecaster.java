package dev.offtake.cause.find;

import dev.offtake.cause.TripMoment;
import dev.offtake.network.Network;
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
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Solves scenes as a cause makes them. Belongs to one thread. */
final class Forecaster {
  private static final String FALSELY = "false";

  private final BleedSystem system;
  private final Bench bench;
  private final Rerun rerun;
  private final Map<Scene, List<Solution>> latched;
  private @Nullable Network latchedFrom;
  private @Nullable Trip latchedBy;
  private @Nullable Broken latchedLast;

  /** Makes one that knows of no state with a trip latched. */
  Forecaster(BleedSystem system) {
    this(system, Map.of());
  }

  /**
   * Makes one.
   *
   * @param latched states of the sound system with a trip latched, by scene; an answer with the
   *     same commands is looked for from there
   */
  Forecaster(BleedSystem system, Map<Scene, List<Solution>> latched) {
    this.system = system;
    this.latched = latched;
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
      Optional<SceneState> start = starts.isEmpty() ? Optional.empty() : Optional.of(starts.get(i));
      states.add(state(broken, scenes.get(i), start, moved.get(i)));
    }
    return states;
  }

  /**
   * Whether scenes are only solved where that is easy from what they start from; the others are
   * then not solved.
   */
  void nearby(boolean only) {
    bench.nearby(only);
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

  private SceneState state(Broken broken, Scene scene, Optional<SceneState> start, Moved moved) {
    Setup asked = moved.setup(scene.setup());
    Solution free =
        start
            .map(s -> bench.solve(broken, asked, s.before(), known(scene, s)))
            .orElseGet(() -> bench.solve(broken, asked, Optional.empty()));
    Solution before = free.outcome().before().orElse(free);
    return switch (scene.trip().when()) {
      case NONE -> new SceneState(free, before);
      case BEFORE -> new SceneState(before, before);
      case RESET_HELD -> new SceneState(tripped(free, scene).isEmpty() ? free : before, before);
      case AFTER, TRIPPED_AGAIN ->
          new SceneState(
              after(broken, scene, asked, free, start.map(s -> known(scene, s)).orElse(List.of())),
              before);
    };
  }

  /** What a scene may come to when something trips. */
  private List<Solution> known(Scene scene, SceneState start) {
    List<Solution> others = latched.getOrDefault(scene, List.of());
    List<Solution> known = new ArrayList<>(others.size() + 1);
    known.add(start.seen());
    known.addAll(others);
    return known;
  }

  /**
   * States of the sound system with one of its trips latched.
   *
   * @param scene at rest
   * @param sound its state
   */
  List<Solution> latched(Scene scene, SceneState sound) {
    List<Solution> states = new ArrayList<>();
    for (Trip trip : trips(system, TripMoment.NONE)) {
      Broken latched = latched(broken(List.of()), trip);
      Solution state = bench.solve(latched, scene.setup(), sound.before(), List.of());
      if (state.solved()) {
        states.add(state);
      }
    }
    return states;
  }

  /** What is broken already, and a trip that has tripped; built once for one system and trip. */
  @SuppressWarnings("ReferenceEquality") // the same network, not one that happens to be alike
  private Broken latched(Broken broken, Trip trip) {
    List<Fault> faults = new ArrayList<>(broken.faults());
    faults.removeIf(fault -> fault.part().name().equals(trip.name()));
    system.modes(trip).stream()
        .filter(mode -> mode.name().equals(FALSELY))
        .forEach(mode -> faults.add(Fault.usual(trip, mode)));
    Broken last = latchedLast;
    if (last == null || latchedFrom != broken.network() || latchedBy != trip) {
      last = Broken.of(system.network(), system.sides(), faults);
      latchedFrom = broken.network();
      latchedBy = trip;
      latchedLast = last;
      return last;
    }
    return last.to(faults);
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

  /**
   * The state with the trip latched, whether the cause would have brought it about or not.
   *
   * @param free the state without
   * @param near what it may come to
   */
  private Solution after(
      Broken broken, Scene scene, Setup asked, Solution free, List<Solution> near) {
    List<Trip> meant = trips(system, scene.trip());
    if (meant.isEmpty() || !tripped(free, scene).isEmpty()) {
      return free;
    }
    Broken latched = latched(broken, meant.get(0));
    return bench.solve(latched, asked, free.outcome().before().orElse(free), near);
  }
}
