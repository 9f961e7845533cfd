package dev.offtake.cause.find;

import dev.offtake.cause.Occasion;
import dev.offtake.cause.Readings;
import dev.offtake.part.Access;
import java.util.EnumSet;
import java.util.Set;

/** What is already paid for when readings come in. */
final class Running {
  private Running() {}

  /** A run on which somebody read something goes on. */
  static Set<Access> open(Readings readings) {
    boolean run =
        readings.occasions().stream()
            .anyMatch(o -> o.teller() == Occasion.Teller.READER && o.day().pressure() > 75_000);
    return run ? EnumSet.of(Access.ENGINE_RUN, Access.FLIGHT_DECK) : EnumSet.noneOf(Access.class);
  }
}
