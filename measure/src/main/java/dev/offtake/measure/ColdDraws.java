package dev.offtake.measure;

import dev.offtake.air.Day;
import dev.offtake.network.Equations;
import dev.offtake.part.Conditions;
import dev.offtake.part.Part;
import dev.offtake.part.Role;
import dev.offtake.solve.Settler;
import dev.offtake.solve.Setup;
import dev.offtake.solve.Setup.PartNumber;
import dev.offtake.solve.Solution;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/**
 * Random situations of the demo twin: core speed 55–105 %, standard air −35…+35 °C up to 40,000 ft,
 * valves locked or stuck half open, every switch in any position.
 */
final class ColdDraws {
  private static final double FOOT = 0.3048;
  private static final double HELD = 0.2;

  private final Twin twin;
  private final Random random;

  /** A situation whose logic is at rest, ready to be written into equations. */
  record Draw(Conditions conditions, double[] parameters, double[] controls) {
    void write(Equations equations) {
      System.arraycopy(parameters, 0, equations.evaluation().parameters, 0, parameters.length);
      System.arraycopy(controls, 0, equations.evaluation().controls, 0, controls.length);
      equations.evaluation().conditions = conditions;
    }
  }

  ColdDraws(Twin twin, long seed) {
    this.twin = twin;
    random = new Random(seed);
  }

  /** Draws until so many have an answer. */
  List<Draw> draw(int wanted) {
    Settler settler = new Settler(twin.system().network());
    List<Draw> draws = new ArrayList<>();
    while (draws.size() < wanted) {
      Setup setup = setup();
      settler.forget();
      Solution solution = settler.solve(setup);
      if (solution.solved()) {
        draws.add(draw(setup, solution));
      }
    }
    return draws;
  }

  private Draw draw(Setup setup, Solution solution) {
    Equations equations = new Equations(twin.system().network(), setup.conditions());
    Twin.takeControls(solution, equations);
    double[] parameters = equations.evaluation().parameters;
    setup
        .changed()
        .forEach(
            (number, value) -> {
              int part = equations.network().part(number.part());
              parameters[equations.parameter(part, number.parameter())] = value;
            });
    return new Draw(setup.conditions(), parameters, equations.evaluation().controls);
  }

  private Setup setup() {
    Map<String, String> positions = new HashMap<>();
    twin.system()
        .switches()
        .forEach((name, all) -> positions.put(name, all.get(random.nextInt(all.size()))));
    Map<String, String> locks = new HashMap<>();
    Map<PartNumber, Double> changed = new HashMap<>();
    for (Part part : twin.system().network().parts()) {
      if (part.role() == Role.VALVE && random.nextDouble() < HELD) {
        hold(part, locks, changed);
      }
    }
    return new Setup(conditions(), positions, locks, changed);
  }

  private void hold(Part part, Map<String, String> locks, Map<PartNumber, Double> changed) {
    switch (random.nextInt(3)) {
      case 0 -> locks.put(part.name(), "locked open");
      case 1 -> locks.put(part.name(), "locked shut");
      default -> changed.put(new PartNumber(part.name(), "stuck at"), 0.5);
    }
  }

  private Conditions conditions() {
    Conditions speeds = twin.at(0.55 + 0.5 * random.nextDouble()).conditions();
    Day day = Day.deviating(40_000 * FOOT * random.nextDouble(), 70 * random.nextDouble() - 35);
    return new Conditions(
        day.pressure(),
        day.temperature(),
        day.inletPressure(),
        day.inletTemperature(),
        speeds.core(),
        speeds.fan(),
        speeds.corrected());
  }
}
