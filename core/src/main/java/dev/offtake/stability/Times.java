package dev.offtake.stability;

import java.util.Locale;

/** Times and frequencies as one would say them, no finer than assumed lags are worth. */
final class Times {
  private Times() {}

  /** A time. */
  static String seconds(double seconds) {
    if (seconds < 0.1) {
      return "under 0.1 s";
    }
    if (seconds < 0.95) {
      return String.format(Locale.ROOT, "about %.1f s", seconds);
    }
    if (seconds < 9.5) {
      return "about " + Math.round(seconds) + " s";
    }
    if (seconds < 90) {
      return "about " + 5 * Math.round(seconds / 5) + " s";
    }
    double minutes = seconds / 60;
    return minutes < 90
        ? "about " + Math.round(minutes) + " min"
        : minutes < 48 * 60 ? "about " + Math.round(minutes / 60) + " h" : "days";
  }

  /** A frequency. */
  static String hertz(double hertz) {
    if (hertz < 0.1) {
      return "once in " + seconds(1 / hertz);
    }
    return hertz < 9.5
        ? String.format(Locale.ROOT, "about %.1f Hz", hertz)
        : "about " + Math.round(hertz) + " Hz";
  }
}
