package dev.offtake.study;

import static org.assertj.core.api.Assertions.assertThat;

import dev.offtake.air.Day;
import dev.offtake.network.Demos;
import dev.offtake.part.Conditions;
import dev.offtake.part.Extent;
import dev.offtake.part.Mode;
import dev.offtake.solve.Settler;
import dev.offtake.solve.Setup;
import dev.offtake.solve.Solution;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.LineUp;
import dev.offtake.system.Setting;
import dev.offtake.system.Standing;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Up to three failures at once, drawn at random with their extents, at random powers, days and
 * line-ups of the demo twin: each state is balanced or has a stated reason, and nothing throws.
 *
 * <p>The build draws some; {@code -Dofftake.faultDraws=5000} draws all (own case, no outside
 * source).
 */
class FaultDrawsTest {
  private static final int DRAWS = Integer.getInteger("offtake.faultDraws", 400);
  private static final BleedSystem TWIN = Demos.demo("twin");
  private static final List<Fault> ALL = Faults.all(TWIN);

  @Test
  void nothingThrowsAndFewHaveNoAnswer() {
    int together = 0;
    List<Long> without = new ArrayList<>();
    for (long number = 0; number < DRAWS; number++) {
      Random random = new Random(777_000 + number);
      List<Fault> faults = faults(random);
      Broken broken;
      try {
        broken = Broken.of(TWIN.network(), TWIN.sides(), faults);
      } catch (Broken.Contradiction cannotBeTogether) {
        continue;
      }
      together++;
      Solution solution = new Settler(broken.network()).solve(broken.setup(setup(random)));
      if (!solution.solved()) {
        without.add(number);
        assertThat(reason(solution)).as("draw %d: %s", number, faults).isNotBlank();
      }
    }
    System.out.printf("%d combinations of failures, without an answer: %s%n", together, without);
    assertThat(together).isGreaterThan(DRAWS / 2);
    assertThat(without).hasSizeLessThanOrEqualTo(Math.max(2, DRAWS / 100));
  }

  private static String reason(Solution solution) {
    if (!solution.refusals().isEmpty()) {
      return solution.refusals().toString();
    }
    List<String> cycle = solution.outcome().cycle();
    return cycle.isEmpty() ? solution.outcome().resists() : cycle.toString();
  }

  private static List<Fault> faults(Random random) {
    List<Fault> faults = new ArrayList<>();
    int count = 1 + random.nextInt(3);
    for (int i = 0; i < count; i++) {
      Fault fault = ALL.get(random.nextInt(ALL.size()));
      faults.add(fault.to(extent(fault.mode(), random)));
    }
    return faults;
  }

  private static double extent(Mode mode, Random random) {
    Extent asks = mode.extent();
    return asks == null ? 1 : asks.least() + random.nextDouble() * (asks.most() - asks.least());
  }

  private static Setup setup(Random random) {
    List<Setting> settings = List.copyOf(TWIN.settings().values());
    List<LineUp> lineUps = List.copyOf(TWIN.lineUps().values());
    Setting setting = settings.get(random.nextInt(settings.size()));
    LineUp lineUp = lineUps.get(random.nextInt(lineUps.size()));
    Standing standing = Standing.of(TWIN, setting, lineUp);
    Day standard = TWIN.dayOf(setting);
    Day day =
        new Day(
            standard.pressure(),
            standard.temperature() - 35 + 70 * random.nextDouble(),
            standard.mach());
    Conditions conditions = setting.conditions(day);
    double factor = 0.97 + 0.06 * random.nextDouble();
    return new Setup(
        conditions.withSpeeds(conditions.core() * factor, conditions.fan() * factor),
        standing.positions(),
        standing.locks(),
        Map.of());
  }
}
