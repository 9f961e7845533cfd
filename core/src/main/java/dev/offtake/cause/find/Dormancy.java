package dev.offtake.cause.find;

import dev.offtake.cause.TripMoment;
import dev.offtake.solve.Setup;
import dev.offtake.study.Broken;
import dev.offtake.study.Fault;
import dev.offtake.study.Notice;
import dev.offtake.study.Sign;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.LineUp;
import dev.offtake.system.Setting;
import dev.offtake.system.Standing;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Tells failures that show themselves from those that nobody notices in the usual line-up. */
final class Dormancy {
  private final List<Scene> scenes = new ArrayList<>();
  private final List<SceneState> healthy;

  Dormancy(BleedSystem system, Forecaster forecaster) {
    LineUp usual = Objects.requireNonNull(system.lineUps().get(LineUp.USUAL), "always there");
    for (Setting power : system.settings().values()) {
      Standing standing = Standing.of(system, power, usual);
      Setup setup =
          new Setup(
              power.conditions(system.dayOf(power)),
              standing.positions(),
              standing.locks(),
              Map.of());
      scenes.add(new Scene(power.name(), power.name(), setup, TripMoment.NONE));
    }
    healthy = forecaster.sound(scenes);
  }

  /** Whether nobody without a test gauge could tell failures at any named power. */
  boolean dormant(List<Fault> faults, Forecaster forecaster) {
    return quiet(faults, scenes, healthy, forecaster);
  }

  /**
   * Whether nobody without a test gauge could tell failures in some scenes.
   *
   * @param sound the scenes of a sound system
   */
  static boolean quiet(
      List<Fault> faults, List<Scene> scenes, List<SceneState> sound, Forecaster forecaster) {
    try {
      Broken broken = forecaster.broken(faults);
      int to;
      for (int from = 0; from < scenes.size(); from = to) {
        to = together(scenes, from);
        List<SceneState> known = sound.subList(from, to);
        List<SceneState> now = forecaster.states(broken, scenes.subList(from, to), known);
        for (int i = 0; i < now.size(); i++) {
          if (!now.get(i).solved()
              || shows(Notice.between(known.get(i).seen(), now.get(i).seen()))) {
            return false;
          }
        }
      }
      return true;
    } catch (Broken.Contradiction impossible) {
      return false;
    }
  }

  /**
   * Number after the last scene that is solved with one: scenes at rest go one by one, as most
   * failures show in the first; those of recordings together, for a run is played only once.
   */
  private static int together(List<Scene> scenes, int from) {
    int to = from + 1;
    while (to < scenes.size()
        && scenes.get(from).instant().isPresent()
        && scenes.get(to).instant().isPresent()) {
      to++;
    }
    return to;
  }

  private static boolean shows(List<Sign> signs) {
    return Notice.best(signs, false) == Sign.Verdict.PLAIN;
  }
}
