package dev.offtake.part;

import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Stated;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A value of what is watched, as a parameter of the part that watches it. */
final class Threshold {
  /** Highest temperature that is taken, K. */
  private static final double HOTTEST = 2000;

  /** Highest pressure that is taken, Pa. */
  private static final double MOST = 5e6;

  private Threshold() {}

  /**
   * Adds a threshold to a part's parameters and tells its position; −1 when there is none, or none
   * that measures what is watched.
   *
   * @param facts what the file says
   * @param key of the threshold
   * @param watches what is watched
   * @param limit the threshold; null when the file gives none
   * @param own parameters so far, added to
   * @param unit removable unit that carries the number
   */
  static int add(
      Facts facts,
      String key,
      Facts.Reading watches,
      Facts.@Nullable Limit limit,
      List<Parameter> own,
      String unit) {
    return add(facts, key, watches, limit == null ? null : limit.value(), own, unit);
  }

  /** How long both of two limits may be passed, s. */
  static double delay(Facts.@Nullable Limit one, Facts.@Nullable Limit other) {
    return Math.max(one == null ? 0 : one.seconds(), other == null ? 0 : other.seconds());
  }

  /** The same of a plain value. */
  static int add(
      Facts facts,
      String key,
      Facts.Reading watches,
      @Nullable Stated value,
      List<Parameter> own,
      String unit) {
    if (value == null) {
      return -1;
    }
    boolean temperature = value.dimension() == Dimension.TEMPERATURE;
    if (temperature != watches.temperature()) {
      String measured = watches.temperature() ? "temperature" : "pressure";
      facts.problem(key, "It watches a " + measured, "Give a " + measured + " or change `watches`");
      return -1;
    }
    own.add(
        new Parameter(
            key,
            value.nominal(),
            value.low(),
            value.high(),
            0,
            temperature ? HOTTEST : MOST,
            value.dimension(),
            unit));
    return own.size() - 1;
  }
}
