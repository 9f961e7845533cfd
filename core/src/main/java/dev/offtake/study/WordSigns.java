package dev.offtake.study;

import dev.offtake.part.Part;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Style;
import java.util.Optional;

/** What tells itself by a word: lights and trips, on or off, and users that go short. */
final class WordSigns {
  private final TwoStates states;

  WordSigns(TwoStates states) {
    this.states = states;
  }

  /**
   * A light or a trip.
   *
   * @param what which of the two
   * @param part full name
   * @param on its word when it is lit or has tripped
   * @param off its other word
   * @param seen where it is seen; empty when the file does not say
   */
  Sign onOrOff(Sign.What what, String part, String on, String off, String seen) {
    boolean was = states.healthy().is(part, on);
    boolean is = states.now().is(part, on);
    return new Sign(
        what,
        part,
        "",
        part,
        Dimension.NUMBER,
        was ? 1 : 0,
        is ? 1 : 0,
        Double.NaN,
        was ? on : off,
        is ? on : off,
        was == is ? Sign.Verdict.HIDDEN : Sign.Verdict.PLAIN,
        seen);
  }

  /** A user; empty where it is not there in the broken system. */
  Optional<Sign> user(Part user) {
    int here = states.healthy().network().part(user.name());
    int there = states.now().network().part(user.name());
    if (there < 0 || states.now().network().parts().get(there).legs().isEmpty()) {
      return Optional.empty();
    }
    String before = states.healthy().doing(here, Style.SHOP).regime();
    String after = states.now().doing(there, Style.SHOP).regime();
    boolean changed = Notice.goesShort(before, after) || Notice.goesShort(after, before);
    return Optional.of(
        new Sign(
            Sign.What.USER,
            user.name(),
            "",
            user.name() + " flow",
            Dimension.MASS_FLOW,
            states.healthy().flow(here, 0),
            states.now().flow(there, 0),
            Double.NaN,
            before,
            after,
            changed ? Sign.Verdict.PLAIN : Sign.Verdict.HIDDEN,
            ""));
  }
}
