package dev.offtake.system;

import dev.offtake.air.Day;
import dev.offtake.part.Conditions;

/**
 * A named power setting.
 *
 * @param name such as {@code ground idle}
 * @param core core speed as a fraction of 100 %
 * @param fan fan speed as a fraction of 100 %; NaN when not given
 * @param holds what the engine keeps constant when the air changes
 * @param day name of the day that belongs to the setting; empty when none does
 * @param lineUp name of the line-up that belongs to the setting; empty when none does
 * @param source where it is stated; empty when not said
 */
public record Setting(
    String name, double core, double fan, Holds holds, String day, String lineUp, String source) {

  /**
   * Speeds and air of the setting on a day; without a fan speed the core's counts.
   *
   * @param air the day
   */
  public Conditions conditions(Day air) {
    return new Conditions(
        air.pressure(),
        air.temperature(),
        air.inletPressure(),
        air.inletTemperature(),
        core,
        Double.isNaN(fan) ? core : fan,
        holds == Holds.CORRECTED);
  }

  /** The same setting with another kind of speed held. */
  public Setting holding(Holds other) {
    return new Setting(name, core, fan, other, day, lineUp, source);
  }

  /** What an engine holds at a setting. */
  public enum Holds {
    /** Physical speed. */
    PHYSICAL,
    /** Speed corrected to a 288.15 K inlet. */
    CORRECTED,
    /** Not said; both must be shown. */
    UNKNOWN
  }
}
