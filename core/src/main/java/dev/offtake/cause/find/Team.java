package dev.offtake.cause.find;

import dev.offtake.solve.Solution;
import dev.offtake.study.Abreast;
import dev.offtake.system.BleedSystem;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.function.DoubleConsumer;
import java.util.function.Function;

/** Forecasters that work side by side, each with equations of its own. */
final class Team {
  private final BleedSystem system;
  private final DoubleConsumer progress;
  private final Map<Scene, List<Solution>> latched = new ConcurrentHashMap<>();
  private final Queue<Forecaster> idle = new ConcurrentLinkedQueue<>();

  Team(BleedSystem system, DoubleConsumer progress) {
    this.system = system;
    this.progress = progress;
  }

  /** Solves scenes with each trip latched, so that what trips is found quickly from now on. */
  void latch(List<Scene> scenes, List<SceneState> sound) {
    List<List<Solution>> states =
        all(
            scenes.size(),
            0,
            0,
            (forecaster, i) ->
                scenes.get(i).instant().isPresent()
                    ? List.of()
                    : forecaster.latched(scenes.get(i), sound.get(i)));
    for (int i = 0; i < states.size(); i++) {
      latched.put(scenes.get(i), states.get(i));
    }
  }

  /** A piece of many. */
  @FunctionalInterface
  interface Piece<T> {
    T of(Forecaster forecaster, int number);
  }

  /** Does one piece of work. */
  <T> T on(Function<Forecaster, T> work) {
    Forecaster free = idle.poll();
    Forecaster forecaster = free == null ? new Forecaster(system, latched) : free;
    T done = work.apply(forecaster);
    idle.add(forecaster);
    return done;
  }

  /**
   * Does many, side by side.
   *
   * @param from share of all work that was done before
   * @param to share that is done then
   * @return in their order
   */
  <T> List<T> all(int count, double from, double to, Piece<T> work) {
    return Abreast.all(count, from, to, progress, i -> on(forecaster -> work.of(forecaster, i)));
  }
}
