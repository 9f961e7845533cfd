package dev.offtake.explain;

import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Style;
import dev.offtake.time.Cycle;
import java.util.Locale;

/** Tells of a valve that swings. */
final class HuntWords {
  private HuntWords() {}

  /** What it begins to do. */
  static String begins(Cycle hunt) {
    return "begins to hunt, " + hertz(hunt.hertz());
  }

  /**
   * A sentence or two with their full stops.
   *
   * @param answer that it belongs to
   */
  static String of(Cycle hunt, PlayAnswer answer, Style style) {
    String moves = share(hunt.swing()) + " of its stroke";
    String name = capital(hunt.part());
    if (!hunt.drives()) {
      return name + " swings with " + hunt.driver() + ", " + moves + ahead(hunt, style) + ".";
    }
    boolean given = answer.profile().paces().given().containsKey(hunt.part());
    double end = answer.curve().curve().sweep().to();
    return name
        + " hunts from "
        + Durations.clock(hunt.from())
        + " s "
        + until(hunt, end)
        + ": "
        + hertz(hunt.hertz())
        + ", swinging "
        + moves
        + ahead(hunt, style)
        + (given ? "." : ", with the lags assumed for it.")
        + followed(hunt);
  }

  private static String until(Cycle hunt, double end) {
    // A hunt that ended before had at least one swing more to come.
    boolean lasts = end - hunt.until() < 1.5 / hunt.hertz();
    return lasts ? "to the end" : "until " + Durations.clock(hunt.until()) + " s";
  }

  private static String ahead(Cycle hunt, Style style) {
    return hunt.point().isEmpty()
        ? ""
        : "; "
            + hunt.point()
            + " swings by "
            + style.print(hunt.pressure(), Dimension.PRESSURE_DIFFERENCE);
  }

  private static String followed(Cycle hunt) {
    return hunt.followed() < hunt.until()
        ? " Followed until "
            + Durations.clock(hunt.followed())
            + " s; from there on it swings alike, and values are its middle."
        : "";
  }

  private static String share(double share) {
    return String.format(Locale.ROOT, share < 0.0095 ? "%.1f %%" : "%.0f %%", 100 * share);
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
