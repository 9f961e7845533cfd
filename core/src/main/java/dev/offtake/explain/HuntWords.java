package dev.offtake.explain;

import dev.offtake.profile.Hunt;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Style;
import java.util.Locale;

/** Tells of a valve that swings. */
final class HuntWords {
  private HuntWords() {}

  /** What it begins to do. */
  static String begins(Hunt hunt) {
    return "begins to hunt, " + hertz(hunt.hertz());
  }

  /**
   * One sentence with its full stop.
   *
   * @param end when playing ended, s
   */
  static String of(Hunt hunt, double end, Style style) {
    // A hunt that ended before had at least one swing more to come.
    boolean lasts = end - hunt.until() < 1.5 / hunt.hertz();
    String until = lasts ? "to the end" : "until " + Durations.clock(hunt.until()) + " s";
    return String.format(
        Locale.ROOT,
        "%s hunts from %s s %s: %s, swinging %.0f %% of its stroke; %s swings by %s.",
        capital(hunt.valve()),
        Durations.clock(hunt.from()),
        until,
        hertz(hunt.hertz()),
        100 * hunt.swing(),
        hunt.point(),
        style.print(hunt.pressure(), Dimension.PRESSURE_DIFFERENCE));
  }

  private static String hertz(double hertz) {
    return hertz < 0.1
        ? "once in " + Durations.of(1 / hertz)
        : String.format(
            Locale.ROOT, hertz < 9.95 ? "%.1f times a second" : "%.0f times a second", hertz);
  }

  /** A sentence begins with a capital letter. */
  static String capital(String text) {
    return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }
}
