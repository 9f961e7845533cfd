package dev.offtake.time;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Decides how long steps may be: short where a swing is to be followed, until the pressures of all
 * points swing little and about as much each time.
 *
 * <p>A swing that has settled goes on as it is until something else is done or happens. A large one
 * is followed to its end: what its middle does to users and limits is not what the swing does.
 */
final class Following {
  /** Swings of less are none, as a share of absolute pressure: rounding of steps. */
  private static final double LEAST = 5e-4;

  /** Larger swings are followed to their end, as a share of absolute pressure. */
  private static final double SMALL = 0.04;

  /** Half swings that must be alike. */
  private static final int ALIKE = 12;

  /** Share by which like half swings differ: twenty steps a swing miss up to 1.2 % of a peak. */
  private static final double DIFFERS = 0.05;

  /** Steps between two turns of a quick swing; the slower ones have more. */
  private static final double STEPS_A_TURN = 10;

  /** Swings that are this many times slower than the quickest are waited for. */
  private static final double SLOWER = 3;

  private final Settings settings;
  private final Turns[] points;
  private final List<Played.Unfollowed> unfollowed = new ArrayList<>();
  private double began;
  private double settled = Double.NaN;
  private double alike = Double.NaN;

  Following(Settings settings, int count) {
    this.settings = settings;
    points = new Turns[count];
    for (int i = 0; i < count; i++) {
      points[i] = new Turns();
    }
  }

  /** The last turning points of one pressure. */
  private static final class Turns {
    final double[] at = new double[ALIKE + 1];
    final double[] value = new double[ALIKE + 1];
    int count;
    boolean rising;
    double extreme = Double.NaN;
    double when;

    void clear() {
      count = 0;
      extreme = Double.NaN;
    }

    void look(double time, double now) {
      double gone = rising ? extreme - now : now - extreme;
      if (!(gone >= 0)) {
        extreme = now;
        when = time;
      } else if (gone > LEAST) {
        at[count % at.length] = when;
        value[count % at.length] = extreme;
        count++;
        rising = !rising;
        extreme = now;
        when = time;
      }
    }

    boolean swings(double since) {
      return count > ALIKE && oldest() >= since;
    }

    double oldest() {
      return at[count % at.length];
    }

    boolean steady() {
      double least = Double.POSITIVE_INFINITY;
      double most = 0;
      for (int k = 0; k < ALIKE; k++) {
        int one = (count + k) % at.length;
        double size = Math.abs(value[(one + 1) % at.length] - value[one]);
        least = Math.min(least, size);
        most = Math.max(most, size);
      }
      return most <= SMALL && most - least <= DIFFERS * most;
    }
  }

  /** Longest step from an instant on, s. */
  double longest(double time) {
    Settings.Fine fine = fine(time);
    if (fine == null || !Double.isNaN(settled)) {
      return settings.longest();
    }
    return Math.min(settings.longest(), fine.longest());
  }

  /** When steps may next have to change their length, s. */
  double edge(double time) {
    double edge = Double.POSITIVE_INFINITY;
    for (Settings.Fine fine : settings.fine()) {
      edge = fine.from() > time ? Math.min(edge, fine.from()) : edge;
      edge = fine.holds(time) ? Math.min(edge, fine.until()) : edge;
    }
    return edge;
  }

  private Settings.@Nullable Fine fine(double time) {
    for (Settings.Fine fine : settings.fine()) {
      if (fine.holds(time)) {
        return fine;
      }
    }
    return null;
  }

  /** Something was done or happened: swings are followed again. */
  void anew(double time) {
    if (!Double.isNaN(settled)) {
      unfollowed.add(new Played.Unfollowed(settled, time, alike));
    }
    settled = Double.NaN;
    began = time;
    for (Turns each : points) {
      each.clear();
    }
  }

  /** Looks at the end of a step. */
  void look(double time, double[] y) {
    Settings.Fine fine = fine(time);
    if (fine == null) {
      anew(time);
      return;
    }
    if (!Double.isNaN(settled)) {
      return;
    }
    for (int i = 0; i < points.length; i++) {
      points[i].look(time, y[2 * i]);
    }
    double since = time - SLOWER * STEPS_A_TURN * ALIKE * fine.longest();
    if (time - Math.max(began, fine.from()) >= fine.least() && settled(since)) {
      settled = time;
      alike = alike(since);
    }
  }

  private boolean settled(double since) {
    boolean any = false;
    for (Turns each : points) {
      if (each.swings(since)) {
        if (!each.steady()) {
          return false;
        }
        any = true;
      }
    }
    return any;
  }

  /** When the first of the last swings of all that swings began, s. */
  private double alike(double since) {
    double first = settled;
    for (Turns each : points) {
      first = each.swings(since) ? Math.min(first, each.oldest()) : first;
    }
    return first;
  }

  /** Stretches that were not followed, when all is played. */
  List<Played.Unfollowed> close(double time) {
    anew(time);
    return unfollowed;
  }
}
