package dev.offtake.cause.find;

import dev.offtake.part.OperatingLimit;
import dev.offtake.part.Part;
import dev.offtake.part.Trip;
import dev.offtake.solve.Solution;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.NeverLine;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Lines and limits that no check may break. */
final class Rules {
  private static final String LIKELY = " under a cause that is still likely";

  private Rules() {}

  /** The line of the file that a scene would break, in words; empty for none. */
  static String broken(BleedSystem system, Scene scene, Solution sound) {
    for (NeverLine never : system.never()) {
      boolean breaks =
          never.condition().isPresent()
              ? never.condition().get().holds(sound.situation())
              : names(system, scene, never);
      if (breaks) {
        String source = never.source().isEmpty() ? "" : " (" + never.source() + ")";
        return "never: " + never.text() + source;
      }
    }
    return "";
  }

  /** A line that a person must judge is kept by not asking for any position that it names. */
  private static boolean names(BleedSystem system, Scene scene, NeverLine never) {
    String text = never.text().toLowerCase(Locale.ROOT);
    for (Map.Entry<String, String> entry : scene.setup().positions().entrySet()) {
      List<String> positions = system.switches().getOrDefault(entry.getKey(), List.of());
      boolean asSits = positions.indexOf(entry.getValue()) == 0;
      String says = (entry.getKey() + " is " + entry.getValue()).toLowerCase(Locale.ROOT);
      if (!asSits && text.contains(says)) {
        return true;
      }
    }
    return false;
  }

  /** The limit that is passed in one of some states and not in the sound one; empty for none. */
  static String limit(BleedSystem system, SceneState sound, List<SceneState> states) {
    for (Part part : system.parts()) {
      if (part instanceof Trip && comes(part, "tripped", sound, states)) {
        return part.name() + " would trip" + LIKELY;
      }
      if (part instanceof OperatingLimit && comes(part, OperatingLimit.PASSED, sound, states)) {
        return part.name() + " would be passed" + LIKELY;
      }
    }
    return "";
  }

  /** Whether a part is somewhere in a position in which it is not when sound. */
  private static boolean comes(
      Part part, String position, SceneState sound, List<SceneState> states) {
    return !sound.seen().is(part.name(), position)
        && states.stream().anyMatch(state -> state.seen().is(part.name(), position));
  }
}
