package dev.offtake.profile;

import dev.offtake.air.Day;
import dev.offtake.part.Conditions;
import dev.offtake.study.Fault;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How everything stands when a profile begins.
 *
 * @param power the power that it has settled at
 * @param dayName name of the day, or its values
 * @param day the air outside; it stays so
 * @param positions position of each switch, by full name
 * @param locks valves fixed by hand, by full name
 * @param faults what is broken from the beginning
 * @param removed supplies whose hose is not fitted, by full name
 */
public record Start(
    Speeds power,
    String dayName,
    Day day,
    Map<String, String> positions,
    Map<String, String> locks,
    List<Fault> faults,
    List<String> removed) {
  /** Keeps its lists and maps. */
  public Start {
    positions = Collections.unmodifiableMap(new LinkedHashMap<>(positions));
    locks = Collections.unmodifiableMap(new LinkedHashMap<>(locks));
    faults = List.copyOf(faults);
    removed = List.copyOf(removed);
  }

  /** Air and speeds at a power. */
  public Conditions conditions(double core, double fan) {
    return new Conditions(
        day.pressure(),
        day.temperature(),
        day.inletPressure(),
        day.inletTemperature(),
        core,
        fan,
        false);
  }
}
