package dev.offtake.cause.find;

import dev.offtake.part.Gauge;
import dev.offtake.part.Part;
import dev.offtake.study.Broken;
import java.util.ArrayList;
import java.util.List;

/**
 * How recorded courses answer to what nobody knows: by playing each run once more for each unknown,
 * moved by one standard deviation. (The slopes of a state at rest tell nothing of a valve on its
 * way.)
 */
final class RunSlopes {
  private final List<Unknown> unknowns;
  private final List<Clue> clues;
  private final List<Scene> scenes;
  private final List<SceneState> base;

  /**
   * Prepares.
   *
   * @param unknowns columns
   * @param clues rows
   * @param scenes of the clues
   * @param base the sound system in them
   */
  RunSlopes(List<Unknown> unknowns, List<Clue> clues, List<Scene> scenes, List<SceneState> base) {
    this.unknowns = unknowns;
    this.clues = clues;
    this.scenes = scenes;
    this.base = base;
  }

  /** Whether a clue is of a recording. */
  static boolean of(Clue clue, List<Scene> scenes) {
    return scenes.get(clue.terms().get(0).scene()).instant().isPresent();
  }

  /** Adds what playing tells to rows that know of gauges only. */
  void add(double[][] rows, Team team) {
    List<Integer> runs = new ArrayList<>();
    for (int i = 0; i < scenes.size(); i++) {
      if (scenes.get(i).instant().isPresent()) {
        runs.add(i);
      }
    }
    List<Scene> run = runs.stream().map(scenes::get).toList();
    team.all(
        unknowns.size(),
        0,
        0,
        (forecaster, u) -> {
          if (played(unknowns.get(u))) {
            column(u, runs, run, forecaster, rows);
          } else if (unknowns.get(u) instanceof Unknown.Channel channel) {
            channel(u, channel, rows);
          }
          return u;
        });
  }

  private static boolean played(Unknown unknown) {
    return !(unknown instanceof Unknown.TestGauge || unknown instanceof Unknown.Channel);
  }

  /** Each column is one thread's own. */
  private void column(
      int u, List<Integer> runs, List<Scene> run, Forecaster forecaster, double[][] rows) {
    if (unknowns.get(u) instanceof Unknown.OfPart number && gauge(number, forecaster)) {
      return;
    }
    double[] theta = new double[unknowns.size()];
    theta[u] = 1;
    List<Moved> all = new Moving(unknowns).of(scenes.size(), theta);
    List<Moved> moved = runs.stream().map(all::get).toList();
    Broken sound = forecaster.broken(List.of());
    List<SceneState> states = forecaster.states(sound, run, List.of(), moved);
    List<SceneState> there = new ArrayList<>(base);
    for (int i = 0; i < runs.size(); i++) {
      there.set(runs.get(i), states.get(i));
    }
    if (!states.stream().allMatch(SceneState::solved)) {
      return;
    }
    for (int c = 0; c < rows.length; c++) {
      if (of(clues.get(c), scenes)) {
        rows[c][u] += clues.get(c).value(there) - clues.get(c).value(base);
      }
    }
  }

  /** The constant error of a gauge moves nothing but its own needle, which is known already. */
  private static boolean gauge(Unknown.OfPart number, Forecaster forecaster) {
    Part part =
        forecaster.broken(List.of()).network().parts().stream()
            .filter(one -> one.name().equals(number.number().part()))
            .findFirst()
            .orElseThrow();
    return part instanceof Gauge
        && part.parameters().get(0).name().equals(number.number().parameter());
  }

  private void channel(int u, Unknown.Channel channel, double[][] rows) {
    for (int c = 0; c < rows.length; c++) {
      Clue clue = clues.get(c);
      boolean own =
          of(clue, scenes)
              && clue.reading().orElseThrow().about().name().equals(channel.about())
              && scenes
                  .get(clue.terms().get(0).scene())
                  .instant()
                  .orElseThrow()
                  .recording()
                  .equals(channel.recording());
      rows[c][u] += own ? channel.error().applyAsDouble(clue.value(base)) * channel.sigma() : 0;
    }
  }
}
