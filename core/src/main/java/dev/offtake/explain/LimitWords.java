package dev.offtake.explain;

import dev.offtake.profile.Watch;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Style;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Puts what limits saw together where both sides saw the same. */
final class LimitWords {
  /** Values that differ by less than this share of the limit are the same. */
  private static final double SAME = 0.01;

  private LimitWords() {}

  /**
   * Limits of the same name on each side that saw about the same, in groups; those that were passed
   * first, then those that came nearest.
   */
  static List<List<Watch.Seen>> alike(List<Watch.Seen> all, List<String> sides) {
    Map<String, List<Watch.Seen>> groups = new LinkedHashMap<>();
    for (Watch.Seen seen : all) {
      String bare = seen.watch().part();
      for (String side : sides) {
        bare = bare.startsWith(side + " ") ? bare.substring(side.length() + 1) : bare;
      }
      String key =
          bare + seen.watch().upwards() + Math.round(seen.most() / seen.watch().limit() / SAME);
      groups.computeIfAbsent(key, k -> new ArrayList<>()).add(seen);
    }
    List<List<Watch.Seen>> sorted = new ArrayList<>(groups.values());
    sorted.sort(Comparator.comparingDouble(group -> share(nearest(group))));
    return sorted;
  }

  private static double share(Watch.Seen seen) {
    return seen.room() / seen.watch().limit();
  }

  /** Whether a limit was passed, or came nearer than it was at the beginning. */
  static boolean moved(Watch.Seen seen) {
    return seen.room() < 0 || Math.abs(seen.most() - seen.first()) > SAME * seen.most();
  }

  /**
   * A value that a limit watches.
   *
   * @param si K, or Pa absolute
   * @param outside pressure of the air outside, Pa
   */
  static String value(Watch watch, double si, double outside, Style style) {
    return watch.temperature()
        ? style.print(si, Dimension.TEMPERATURE)
        : style.print(si - outside, Dimension.GAUGE_PRESSURE);
  }

  /** The one with the least room. */
  static Watch.Seen nearest(List<Watch.Seen> group) {
    return group.stream().min(Comparator.comparingDouble(Watch.Seen::room)).orElseThrow();
  }
}
