package dev.offtake.part;

import dev.offtake.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;

/**
 * Ways in which a {@link Trip} can fail.
 *
 * <p>Rates are orders of magnitude, assumptions; how they are looked for is common practice, no
 * source.
 */
final class TripModes {
  private static final String UNIT = "trip";

  /** A degree Fahrenheit as a difference, K. */
  private static final double DEG_F = 5 / 9.0;

  /** A reset lower than nothing has no meaning, and one below absolute zero neither. */
  private static final double NOTHING = 0;

  private static final Inspection SIMULATE =
      new Inspection(
          "Give its sensor the limit with a test set and watch what latches, lights and resets",
          Access.TEST_PORT,
          30,
          "test set for its sensor");

  private TripModes() {}

  static List<Mode> of(Trip trip) {
    List<Mode> modes = new ArrayList<>();
    modes.add(
        Mode.named("dead", UNIT, "It never trips, whatever it watches")
            .puts("alive", 0)
            .perMillionHours(10)
            .inspected(SIMULATE));
    modes.add(
        Mode.named("false", UNIT, "It has tripped without a cause and does not reset")
            .rebuilds((part, twin) -> List.of(((Trip) part).falselyTripped()))
            .perMillionHours(20)
            .noticed("Its light comes on with everything in limits")
            .inspected(SIMULATE));
    modes.add(drifted("drifted high", "It acts at a higher value than it should", 1, trip));
    modes.add(drifted("drifted low", "It acts at a lower value than it should", -1, trip));
    modes.add(
        Mode.named(
                "latch does not hold", UNIT, "It lets go as soon as the limit is no longer passed")
            .rebuilds((part, twin) -> List.of(((Trip) part).withoutLatch()))
            .perMillionHours(5)
            .noticed("What it shuts opens and shuts again and again")
            .inspected(SIMULATE));
    modes.add(
        Mode.named("reset does not hold", UNIT, "Once tripped it cannot be reset")
            .rebuilds((part, twin) -> List.of(((Trip) part).withoutReset()))
            .perMillionHours(5)
            .is(Mode.Trait.MOVING)
            .noticed("Its light stays on or comes back as soon as it is reset")
            .inspected(SIMULATE));
    return modes;
  }

  private static Mode drifted(String name, String means, int sense, Trip trip) {
    Mode mode =
        Mode.named(name, UNIT, means).extent(off(trip)).perMillionHours(20).inspected(SIMULATE);
    for (Parameter limit : trip.parameters().subList(0, trip.limits())) {
      mode = mode.moves(limit.name(), (healthy, by) -> Math.max(NOTHING, healthy + sense * by));
    }
    return mode;
  }

  private static Extent off(Trip trip) {
    if (trip.watches().temperature()) {
      return new Extent(
          "how far off", Dimension.TEMPERATURE_DIFFERENCE, 5 * DEG_F, 40 * DEG_F, 200 * DEG_F);
    }
    double limit =
        trip.parameters().subList(0, trip.limits()).stream()
            .mapToDouble(Parameter::value)
            .max()
            .orElse(1);
    return new Extent(
        "how far off", Dimension.PRESSURE_DIFFERENCE, 0.02 * limit, 0.2 * limit, 0.9 * limit);
  }
}
