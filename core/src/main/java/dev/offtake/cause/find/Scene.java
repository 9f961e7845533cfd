package dev.offtake.cause.find;

import dev.offtake.cause.Occasion;
import dev.offtake.cause.TripMoment;
import dev.offtake.solve.Setup;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.FanLine;
import dev.offtake.system.Setting;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * A power, a day and a line-up at which something was read or could be read.
 *
 * @param name power and what stands differently, as a person would say it
 * @param power name of the power; empty where only a speed was read
 * @param setup what is asked of the healthy system
 * @param trip on which side of a trip
 * @param instant of a recording; empty for a state at rest
 */
public record Scene(
    String name, String power, Setup setup, TripMoment trip, Optional<Instant> instant) {
  /** A state at rest. */
  Scene(String name, String power, Setup setup, TripMoment trip) {
    this(name, power, setup, trip, Optional.empty());
  }

  /** An instant of a recording, with what is asked of a sound system at that time. */
  static Scene of(Instant instant, Setup asked) {
    String name = "in the recording " + instant.recording().file();
    return new Scene(name, "", asked, TripMoment.NONE, Optional.of(instant));
  }

  /**
   * The scene of an occasion.
   *
   * @param system what was looked at
   * @param occasion when
   */
  public static Scene of(BleedSystem system, Occasion occasion) {
    Setting power = occasion.power();
    Setting whole = Double.isNaN(power.fan()) ? fan(system, power) : power;
    Setup setup =
        new Setup(
            whole.conditions(occasion.day()),
            occasion.standing().positions(),
            occasion.standing().locks(),
            Map.of());
    return new Scene(words(occasion), power.name(), setup, occasion.trip());
  }

  private static Setting fan(BleedSystem system, Setting power) {
    double fan = FanLine.of(system).fan(power.core());
    return new Setting(
        power.name(),
        power.core(),
        fan,
        power.holds(),
        power.day(),
        power.lineUp(),
        power.source());
  }

  private static String words(Occasion occasion) {
    StringBuilder words = new StringBuilder(occasion.power().name());
    if (words.isEmpty()) {
      words.append(String.format(Locale.ROOT, "core %.1f %%", 100 * occasion.power().core()));
    }
    if (!occasion.lineUp().isEmpty() && !occasion.lineUp().equals("usual")) {
      words.append(", ").append(occasion.lineUp());
    }
    occasion.set().forEach((what, how) -> words.append(", ").append(what).append(' ').append(how));
    String trip = occasion.trip().words();
    return trip.isEmpty() ? words.toString() : words.append(", ").append(trip).toString();
  }

  /** The same scene with a switch in another position. */
  Scene with(String control, String position) {
    Map<String, String> positions = new LinkedHashMap<>(setup.positions());
    positions.put(control, position);
    return new Scene(
        name + ", " + control + " " + position,
        power,
        new Setup(setup.conditions(), positions, setup.locks(), setup.changed()),
        trip);
  }
}
