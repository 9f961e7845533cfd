package dev.offtake.cause.find;

import dev.offtake.cause.TripMoment;
import dev.offtake.part.Conditions;
import dev.offtake.part.Control;
import dev.offtake.part.Part;
import dev.offtake.solve.Setup;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.LineUp;
import dev.offtake.system.Setting;
import dev.offtake.system.Standing;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Powers and line-ups at which a check could be made on the ground: each named power in each
 * line-up of the file, and with one switch moved from the usual line-up. Nobody is asked to switch
 * a bus dead or to turn a starter of a running engine.
 */
final class Stage {
  private static final String BUS = " bus";

  private final BleedSystem system;
  private final Set<String> untouched = new LinkedHashSet<>();

  private Stage(BleedSystem system) {
    this.system = system;
    system.switches().keySet().stream().filter(name -> name.endsWith(BUS)).forEach(untouched::add);
    for (Part part : system.parts()) {
      if (part.kind().equals("starter")) {
        untouched.addAll(asked(part));
      }
    }
  }

  private Set<String> asked(Part part) {
    Set<String> names = new LinkedHashSet<>();
    for (Control control : part.controls()) {
      for (Control.Rule rule : control.rules()) {
        if (rule.when() != null) {
          names.addAll(rule.when().names());
        }
      }
    }
    return names;
  }

  static List<Scene> scenes(BleedSystem system) {
    Stage stage = new Stage(system);
    List<Scene> scenes = new ArrayList<>();
    for (Setting power : system.settings().values()) {
      if (stage.onGround(power)) {
        stage.power(power, scenes);
      }
    }
    return scenes;
  }

  private boolean onGround(Setting power) {
    Conditions c = power.conditions(system.dayOf(power));
    // A day with ram or thin air is a flight.
    return c.inletP() == c.ambientP() && c.ambientP() > 75_000;
  }

  private void power(Setting power, List<Scene> scenes) {
    for (LineUp lineUp : system.lineUps().values()) {
      Standing standing = Standing.of(system, power, lineUp);
      String name =
          lineUp.name().equals(LineUp.USUAL) ? power.name() : power.name() + ", " + lineUp.name();
      add(scene(name, power, standing.positions(), standing.locks()), scenes);
    }
    LineUp usual = system.lineUps().getOrDefault(LineUp.USUAL, NO_LINE_UP);
    Standing standing = Standing.of(system, power, usual);
    system
        .switches()
        .forEach(
            (control, positions) -> {
              for (String position : positions) {
                if (!untouched.contains(control)) {
                  Map<String, String> moved = new LinkedHashMap<>(standing.positions());
                  moved.put(control, position);
                  String name = power.name() + ", " + control + " " + position;
                  add(scene(name, power, moved, standing.locks()), scenes);
                }
              }
            });
  }

  private static final LineUp NO_LINE_UP = new LineUp(LineUp.USUAL, Map.of(), Map.of());

  private Scene scene(
      String name, Setting power, Map<String, String> positions, Map<String, String> locks) {
    Conditions conditions = power.conditions(system.dayOf(power));
    return new Scene(
        name, power.name(), new Setup(conditions, positions, locks, Map.of()), TripMoment.NONE);
  }

  private static void add(Scene scene, List<Scene> scenes) {
    if (scenes.stream().noneMatch(known -> known.setup().equals(scene.setup()))) {
      scenes.add(scene);
    }
  }
}
