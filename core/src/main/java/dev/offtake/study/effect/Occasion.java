package dev.offtake.study.effect;

import dev.offtake.part.Conditions;
import dev.offtake.solve.Setup;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.LineUp;
import dev.offtake.system.Setting;
import dev.offtake.system.Standing;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A named power, on its day, in a line-up.
 *
 * @param power name of the power setting
 * @param lineUp name of the line-up
 * @param setup the healthy question
 */
public record Occasion(String power, String lineUp, Setup setup) {
  /** Every named power in every line-up; what would be the same question stands once. */
  public static List<Occasion> all(BleedSystem system) {
    List<Occasion> occasions = new ArrayList<>();
    for (Setting setting : system.settings().values()) {
      for (LineUp lineUp : system.lineUps().values()) {
        Occasion occasion = of(system, setting, lineUp);
        if (occasions.stream().noneMatch(other -> other.same(occasion))) {
          occasions.add(occasion);
        }
      }
    }
    return occasions;
  }

  private static Occasion of(BleedSystem system, Setting setting, LineUp lineUp) {
    Standing standing = Standing.of(system, setting, lineUp);
    Conditions conditions = setting.conditions(system.dayOf(setting));
    return new Occasion(
        setting.name(),
        lineUp.name(),
        new Setup(conditions, standing.positions(), standing.locks(), Map.of()));
  }

  private boolean same(Occasion other) {
    return power.equals(other.power) && setup.equals(other.setup);
  }

  /** Power, and the line-up where it is not the usual one. */
  public String name() {
    return lineUp.equals(LineUp.USUAL) ? power : power + ", " + lineUp;
  }
}
