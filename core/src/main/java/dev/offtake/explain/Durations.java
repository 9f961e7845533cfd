package dev.offtake.explain;

import java.util.Locale;

/** Times as one would say them. */
final class Durations {
  private Durations() {}

  /** {@code 4.2 s}, {@code 147 s}, {@code 12 min}, {@code 1.5 h}. */
  static String of(double seconds) {
    if (Double.isInfinite(seconds)) {
      return "not in an hour";
    }
    if (seconds < 9.95) {
      return String.format(Locale.ROOT, "%.1f s", seconds);
    }
    if (seconds < 299.5) {
      return String.format(Locale.ROOT, "%.0f s", seconds);
    }
    // Rounded up: nobody waits too short because of it.
    return seconds < 3540
        ? String.format(Locale.ROOT, "%.0f min", Math.ceil(seconds / 60))
        : String.format(Locale.ROOT, "%.1f h", seconds / 3600);
  }

  /** A time on the clock of a run: {@code 12.3}. */
  static String clock(double seconds) {
    return String.format(Locale.ROOT, "%.1f", seconds);
  }
}
