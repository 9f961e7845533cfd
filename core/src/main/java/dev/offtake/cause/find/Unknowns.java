package dev.offtake.cause.find;

import dev.offtake.cause.About;
import dev.offtake.cause.Recording;
import dev.offtake.cause.UsedGauge;
import dev.offtake.part.Conditions;
import dev.offtake.part.Parameter;
import dev.offtake.part.Part;
import dev.offtake.part.Role;
import dev.offtake.quantity.Dimension;
import dev.offtake.solve.Setup;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.FanLine;
import dev.offtake.time.Pace;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;

/** Lists what nobody knows exactly about some scenes. */
final class Unknowns {
  /** Core speed, a share of full speed: half a point, an assumption. */
  private static final double CORE = 0.005;

  /**
   * The indicator is wrong by the same each time that the lever is set there, but the lever is not
   * set to the same each time: half of the mean square each, an assumption.
   */
  private static final double SHARED = Math.sqrt(0.5);

  /** Barometer, Pa (0.05 inHg): an assumption. */
  private static final double BAROMETER = 0.05 * 3386.389;

  /** Air, K (5 °F): an assumption. */
  private static final double AIR = 5 / 1.8;

  /** A test gauge that nobody described, Pa (0.5 psi) and K (5 °F): assumptions. */
  static final double TEST_GAUGE = 0.5 * 6894.757;

  static final double THERMOMETER = 5 / 1.8;

  /** Clock of a recorder against the profile's, s: an assumption. */
  private static final double CLOCK = 0.25;

  private Unknowns() {}

  static List<Unknown> of(BleedSystem system, List<Scene> scenes, List<UsedGauge> gauges) {
    List<Unknown> all = new ArrayList<>();
    for (Part part : system.network().parts()) {
      for (Parameter parameter : part.parameters()) {
        if (parameter.high() > parameter.low()) {
          all.add(ofPart(part, parameter));
        }
      }
    }
    gauges.forEach(gauge -> all.add(testGauge(gauge)));
    outside(system, scenes, all);
    recorded(system, scenes, all);
    return all;
  }

  /** What has not settled where clues read a temperature; in a recording walls are played along. */
  static List<Unknown> unsettled(List<Clue> clues, List<Scene> scenes, List<SceneState> sound) {
    Set<Unknown> all = new LinkedHashSet<>();
    for (Clue clue : clues) {
      for (Clue.Term term : clue.terms()) {
        if (scenes.get(term.scene()).instant().isEmpty()) {
          SceneState state = sound.get(term.scene());
          term.probe()
              .sense(state)
              .filter(sense -> sense.hot() != Probe.Sense.NONE)
              .map(sense -> unsettled(term.scene(), sense.hot(), state))
              .ifPresent(all::add);
        }
      }
    }
    return List.copyOf(all);
  }

  private static Unknown unsettled(int scene, int point, SceneState sound) {
    return new Unknown.Unsettled(scene, point, Settling.least(sound.seen(), point), 1);
  }

  private static void recorded(BleedSystem system, List<Scene> scenes, List<Unknown> all) {
    Set<Recording> recordings = new LinkedHashSet<>();
    scenes.forEach(scene -> scene.instant().ifPresent(at -> recordings.add(at.recording())));
    for (Recording recording : recordings) {
      all.add(new Unknown.Clock(recording, CLOCK));
      for (Recording.Channel channel : recording.channels()) {
        About.Scaled about = channel.about();
        DoubleUnaryOperator error = value -> Errors.of(system).of(about.temperature(), value);
        all.add(new Unknown.Channel(recording, about.name(), error, 1));
      }
    }
    recordings.stream().findFirst().ifPresent(first -> paces(system, first, all));
  }

  private static void paces(BleedSystem system, Recording recording, List<Unknown> all) {
    for (Part part : system.network().parts()) {
      if (part.role() != Role.VALVE && !part.kind().equals("flow user")) {
        continue;
      }
      Pace pace = recording.profile().paces().of(part);
      for (PaceLine line : PaceLine.values()) {
        // What is quicker than the recorder leaves nothing in its table.
        if (line.in(pace) && (line == PaceLine.FRICTION || line.of(pace) >= recording.step())) {
          all.add(new Unknown.OfPace(part.name(), line, line.of(pace), 1));
        }
      }
    }
  }

  private static Unknown ofPart(Part part, Parameter p) {
    Setup.PartNumber number = new Setup.PartNumber(part.name(), p.name());
    double up = p.high() - p.value();
    double down = p.value() - p.low();
    // Mean square of a value anywhere between −down and up.
    double square = (up * up * up + down * down * down) / (3 * (up + down));
    return new Unknown.OfPart(number, p.value(), p.min(), p.max(), Math.sqrt(square));
  }

  private static Unknown testGauge(UsedGauge gauge) {
    boolean hot = gauge.dimension() == Dimension.TEMPERATURE_DIFFERENCE;
    double usual = hot ? THERMOMETER : TEST_GAUGE;
    double band = Double.isNaN(gauge.constant()) ? usual : gauge.constant();
    return new Unknown.TestGauge(gauge.name(), gauge.sharesSender(), band / Math.sqrt(3));
  }

  private static void outside(BleedSystem system, List<Scene> scenes, List<Unknown> all) {
    Map<Object, List<Integer>> levers = new LinkedHashMap<>();
    Map<Object, List<Integer>> airs = new LinkedHashMap<>();
    for (int i = 0; i < scenes.size(); i++) {
      Conditions c = scenes.get(i).setup().conditions();
      // One indicator of the core is wrong by the same all along a recording.
      Object lever = scenes.get(i).instant().<Object>map(Instant::recording).orElse(c);
      levers.computeIfAbsent(lever, k -> new ArrayList<>()).add(i);
      airs.computeIfAbsent(List.of(c.ambientP(), c.ambientT()), k -> new ArrayList<>()).add(i);
    }
    FanLine line = FanLine.of(system);
    levers.values().forEach(at -> all.addAll(lever(at, scenes, fan(line, scenes, at))));
    airs.values().forEach(at -> all.add(new Unknown.Barometer(at, BAROMETER)));
    airs.values().forEach(at -> all.add(new Unknown.Air(at, AIR)));
  }

  private static List<Unknown> lever(List<Integer> at, List<Scene> scenes, double fan) {
    if (at.size() == 1 || scenes.get(at.get(0)).instant().isPresent()) {
      return List.of(new Unknown.Core(at, CORE, fan));
    }
    List<Unknown> all = new ArrayList<>();
    all.add(new Unknown.Core(at, CORE * SHARED, fan));
    at.forEach(scene -> all.add(new Unknown.Core(List.of(scene), CORE * SHARED, fan)));
    return all;
  }

  private static double fan(FanLine line, List<Scene> scenes, List<Integer> at) {
    double core = scenes.get(at.get(0)).setup().conditions().core();
    return (line.fan(core + CORE) - line.fan(core)) / CORE;
  }
}
