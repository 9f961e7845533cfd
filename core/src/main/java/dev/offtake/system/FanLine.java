package dev.offtake.system;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Fan speed that belongs to a core speed: a straight line through the settings of a file, an
 * assumption.
 *
 * @param settings those that give a fan speed, by rising core speed
 */
public record FanLine(List<Setting> settings) {
  /** The line of a system. */
  public static FanLine of(BleedSystem system) {
    List<Setting> known = new ArrayList<>(system.settings().values());
    known.removeIf(setting -> Double.isNaN(setting.fan()) || Double.isNaN(setting.core()));
    known.sort(Comparator.comparingDouble(Setting::core));
    return new FanLine(List.copyOf(known));
  }

  /**
   * The fan speed, a fraction; that of the core where no setting gives one. Beyond the settings the
   * line of the nearest gap goes on, never below 0.
   *
   * @param core a fraction
   */
  public double fan(double core) {
    if (settings.isEmpty()) {
      return core;
    }
    Setting below = settings.get(0);
    Setting above = below;
    for (Setting next : settings) {
      if (next.core() > above.core()) {
        below = above;
        above = next;
      }
      if (above.core() > below.core() && above.core() >= core) {
        break;
      }
    }
    double gap = above.core() - below.core();
    double slope = gap > 0 ? (above.fan() - below.fan()) / gap : 0;
    return Math.max(0, below.fan() + slope * (core - below.core()));
  }

  /** Whether a core speed lies between the first and the last setting. */
  public boolean covers(double core) {
    return !settings.isEmpty()
        && core >= settings.get(0).core()
        && core <= settings.get(settings.size() - 1).core();
  }
}
