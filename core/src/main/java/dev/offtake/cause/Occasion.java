package dev.offtake.cause;

import dev.offtake.air.Day;
import dev.offtake.system.Setting;
import dev.offtake.system.Standing;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What was read at one time: one state of the system.
 *
 * @param power power; without a name where only speeds were read, the fan speed NaN where only the
 *     core's was
 * @param lineUp name of the line-up; empty for the usual one
 * @param set switches and valves that stand differently, as they were written
 * @param standing how all switches and valves stand, line-up and single settings together
 * @param ownDay day that is written with these readings; empty when none is
 * @param day air that holds: these readings' own, else that of the power, else that of the
 *     readings, else the standard day
 * @param trip before or after a trip
 * @param teller who says so
 * @param notDuplicated whether what was complained of could not be seen again
 * @param readings in the order they were taken
 */
public record Occasion(
    Setting power,
    String lineUp,
    Map<String, String> set,
    Standing standing,
    Optional<SaidDay> ownDay,
    Day day,
    TripMoment trip,
    Teller teller,
    boolean notDuplicated,
    List<Reading> readings) {

  /** Keeps its map and list. */
  public Occasion {
    set = Collections.unmodifiableMap(new LinkedHashMap<>(set));
    readings = List.copyOf(readings);
  }

  /** Who says what was read. */
  public enum Teller {
    /** Who holds the pen read it. */
    READER,
    /** The crew said so: weaker than a reading. */
    CREW
  }
}
