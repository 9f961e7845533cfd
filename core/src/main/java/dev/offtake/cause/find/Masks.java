package dev.offtake.cause.find;

import dev.offtake.part.LeakLoop;
import dev.offtake.part.Light;
import dev.offtake.part.Mode;
import dev.offtake.part.Part;
import dev.offtake.part.Trip;
import dev.offtake.study.Fault;
import dev.offtake.system.BleedSystem;
import java.util.ArrayList;
import java.util.List;

/** Second failures that hide a first one: of the loops, lights and trips that it would set off. */
final class Masks {
  private Masks() {}

  /**
   * The pairs.
   *
   * @param system whose parts can fail
   * @param first the first failure
   * @param sound scenes of a sound system
   * @param now the same scenes with the first failure
   */
  static List<Cause> of(
      BleedSystem system, Cause first, List<SceneState> sound, List<SceneState> now) {
    List<Cause> pairs = new ArrayList<>();
    Fault own = first.faults().get(0);
    for (Part part : system.parts()) {
      if (!part.name().equals(own.part().name()) && setOff(part, sound, now)) {
        for (Mode mode : system.modes(part)) {
          pairs.add(Cause.of(own, Fault.usual(part, mode)));
        }
      }
    }
    return pairs;
  }

  private static boolean setOff(Part part, List<SceneState> sound, List<SceneState> now) {
    String acts =
        part instanceof LeakLoop
            ? "lit"
            : part instanceof Light ? "on" : part instanceof Trip ? "tripped" : "";
    if (acts.isEmpty()) {
      return false;
    }
    for (int i = 0; i < now.size(); i++) {
      if (now.get(i).seen().is(part.name(), acts) && !sound.get(i).seen().is(part.name(), acts)) {
        return true;
      }
    }
    return false;
  }
}
