package dev.offtake.explain;

import dev.offtake.profile.BleedDown;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Style;
import dev.offtake.time.Played;
import java.util.ArrayList;
import java.util.List;

/** Tells how trapped air leaves. Never says that anything may be opened. */
final class BleedWords {
  /** Said wherever a time is told. */
  static final String PROVE = "Prove it with a gauge.";

  private BleedWords() {}

  /** The slowest pocket and what to expect of it. */
  static List<String> headline(PlayAnswer.Bleeding bleed, Style style) {
    List<String> says = new ArrayList<>();
    String to = style.print(bleed.healthy().to(), Dimension.GAUGE_PRESSURE);
    if (bleed.healthy().end() != Played.End.DONE) {
      says.add(
          "The bleed-down could not be looked at to its end: " + bleed.healthy().resists() + ".");
    } else if (bleed.worst().isEmpty()) {
      says.add("No air is shut in above " + to + " once the engine stands. " + PROVE);
    } else {
      says.add(slowest(bleed.worst().get(0), to, style));
    }
    for (PlayAnswer.Caused cause : bleed.causes()) {
      if (!cause.done()) {
        says.add(
            "With "
                + cause.words()
                + " it could not be looked at: "
                + cause.down().resists()
                + ".");
      }
    }
    return says;
  }

  private static String slowest(PlayAnswer.Worst worst, String to, Style style) {
    String because = worst.cause().isEmpty() ? "" : " with " + worst.cause();
    if (Double.isInfinite(worst.worst())) {
      return "Slowest pocket: "
          + worst.pocket()
          + because
          + " does NOT fall to "
          + to
          + " within an hour; "
          + style.print(worst.left(), Dimension.GAUGE_PRESSURE)
          + " is left. "
          + PROVE;
    }
    return "Slowest pocket: "
        + worst.pocket()
        + because
        + ", expected below "
        + to
        + " "
        + Durations.of(worst.worst())
        + " after fuel off. "
        + PROVE;
  }

  /** Heads of the table of pockets. */
  static List<String> heads(PlayAnswer.Bleeding bleed, Style style) {
    String to = "below " + style.print(bleed.healthy().to(), Dimension.GAUGE_PRESSURE) + " after";
    return List.of("at standstill", to);
  }

  /** The cells of a pocket: what is in it at standstill, how long it takes. */
  static List<String> cells(PlayAnswer.Worst worst, Style style) {
    return List.of(
        style.print(worst.begins(), Dimension.GAUGE_PRESSURE), Durations.of(worst.worst()));
  }

  /** What the model does not see, a sentence. */
  static String blind(BleedDown down) {
    return "Counted from fuel off, through what the file says is open or leaks; looked at for "
        + Durations.of(down.looked())
        + ". A pocket that the file does not name is not here.";
  }
}
