package dev.offtake.solve;

import dev.offtake.air.Day;
import dev.offtake.part.Conditions;
import dev.offtake.part.Part;
import dev.offtake.part.Role;
import dev.offtake.system.BleedSystem;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;

/**
 * Questions drawn at random, each from its number alone, so that any of them can be asked again.
 */
final class Draw {
  private static final double FORTY_THOUSAND_FEET = 12192;

  private Draw() {}

  /**
   * Core speed 55 to 105 %, standard air −35 to +35 °C, sea level to 40,000 ft, each switch
   * anywhere (so each user and supply on or off), each valve locked open, locked shut or stuck half
   * way once in eight.
   */
  static Setup anything(BleedSystem system, long number) {
    SplittableRandom random = new SplittableRandom(7919 * number + 1);
    double core = 0.55 + 0.5 * random.nextDouble();
    double altitude = random.nextDouble() * FORTY_THOUSAND_FEET;
    Day day = Day.deviating(altitude, -35 + 70 * random.nextDouble());
    return setup(system, random, conditions(day, core), 8, List.of());
  }

  /** The same line-ups within 0.1 % of one of the given core speeds, on a standard day. */
  static Setup near(BleedSystem system, long number, List<Double> speeds) {
    SplittableRandom random = new SplittableRandom(104729 * number + 2);
    double core = speeds.get(random.nextInt(speeds.size()));
    core *= 1 + 0.001 * (2 * random.nextDouble() - 1);
    return new Setup(conditions(Day.STANDARD, core), first(system), Map.of(), Map.of());
  }

  /** Everything shut or nearly still: switches that stop air, most valves locked shut. */
  static Setup still(BleedSystem system, long number) {
    SplittableRandom random = new SplittableRandom(15485863 * number + 3);
    double core = random.nextInt(3) == 0 ? 1e-3 : 0.55 + 0.5 * random.nextDouble();
    Day day = Day.at(random.nextDouble() * FORTY_THOUSAND_FEET);
    return setup(system, random, conditions(day, core), 1, List.of("OFF", "SHUT", "DEAD"));
  }

  static Conditions conditions(Day day, double core) {
    double fan = Math.max(0.05, 1.9 * core - 0.9);
    return new Conditions(
        day.pressure(),
        day.temperature(),
        day.inletPressure(),
        day.inletTemperature(),
        core,
        fan,
        false);
  }

  private static Map<String, String> first(BleedSystem system) {
    Map<String, String> positions = new HashMap<>();
    system.switches().forEach((name, all) -> positions.put(name, all.get(0)));
    return positions;
  }

  private static Setup setup(
      BleedSystem system,
      SplittableRandom random,
      Conditions conditions,
      int lockedOnceIn,
      List<String> wanted) {
    Map<String, String> positions = new HashMap<>();
    system.switches().keySet().stream()
        .sorted()
        .forEach(
            name -> {
              List<String> all = system.switches().get(name);
              String drawn = all.get(random.nextInt(all.size()));
              positions.put(name, all.stream().filter(wanted::contains).findFirst().orElse(drawn));
            });
    Map<String, String> locks = new HashMap<>();
    Map<Setup.PartNumber, Double> changed = new HashMap<>();
    for (Part part : system.network().parts()) {
      if (part.role() == Role.VALVE) {
        lock(part, random.nextInt(lockedOnceIn * 3), wanted.isEmpty(), locks, changed);
      }
    }
    return new Setup(conditions, positions, locks, changed);
  }

  private static void lock(
      Part part,
      int drawn,
      boolean anyway,
      Map<String, String> locks,
      Map<Setup.PartNumber, Double> changed) {
    if (!anyway) {
      if (drawn > 0) {
        locks.put(part.name(), "locked shut");
      }
      return;
    }
    switch (drawn) {
      case 0, 1, 2 -> locks.put(part.name(), "locked open");
      case 3, 4, 5 -> locks.put(part.name(), "locked shut");
      case 6, 7, 8 -> changed.put(new Setup.PartNumber(part.name(), "stuck at"), 0.5);
      default -> {}
    }
  }
}
