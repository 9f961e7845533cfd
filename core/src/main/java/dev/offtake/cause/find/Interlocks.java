package dev.offtake.cause.find;

import dev.offtake.solve.Setup;
import dev.offtake.system.Assumption;
import dev.offtake.system.BleedSystem;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Interlocks that no paper states: a check that moves the switch may find the valve shut by it. */
final class Interlocks {
  private static final String SHUT_WHEN = "shut when";

  private Interlocks() {}

  /** The assumption that a scene hangs on; empty for none. */
  static Optional<Assumption> of(BleedSystem system, Scene scene) {
    return system.assumptions().stream()
        .filter(assumption -> assumption.unknown() && assumption.key().equals(SHUT_WHEN))
        .filter(assumption -> moved(system, scene, assumption))
        .findFirst();
  }

  private static boolean moved(BleedSystem system, Scene scene, Assumption assumption) {
    String side =
        system.sides().stream()
            .filter(own -> assumption.subject().startsWith(own + " "))
            .map(own -> own + " ")
            .findFirst()
            .orElse("");
    return scene.setup().positions().entrySet().stream()
        .filter(entry -> entry.getKey().startsWith(side))
        .anyMatch(
            entry ->
                assumption
                    .says()
                    .contains(entry.getKey().substring(side.length()) + " " + entry.getValue()));
  }

  /** The scene with the valve shut, as if the interlock were there. */
  static Scene shut(Scene scene, Assumption assumption) {
    Map<String, String> locks = new LinkedHashMap<>(scene.setup().locks());
    locks.put(assumption.subject(), "locked shut");
    Setup setup = scene.setup();
    return new Scene(
        scene.name(),
        scene.power(),
        new Setup(setup.conditions(), setup.positions(), locks, setup.changed()),
        scene.trip());
  }
}
