package dev.offtake.cause.find;

import dev.offtake.cause.About;
import dev.offtake.cause.Recording;
import dev.offtake.part.Gauge;
import dev.offtake.time.Drive;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Finds where a recording swings while nothing is done: the swings of a play keep no step with
 * those of a record, so that there only their middle, size and frequency can be weighed.
 */
final class Stretches {
  /** What was done is over after this share of the time until the next, and so long at least, s. */
  private static final double SETTLED = 0.25;

  private static final double SOONEST = 2;

  /** Shorter stretches are not looked at, s. */
  private static final double SHORTEST = 4;

  /** A swing is so many times as large as what the gauge does by itself. */
  private static final double SEEN = 3;

  /** Both halves of what only bends swing less than this share of the whole. */
  private static final double BENDS = 0.55;

  /** One swing and a half at least. */
  private static final int CROSSINGS = 3;

  /** Most values of a stretch that are looked at. */
  private static final int MOST = 2000;

  /**
   * A stretch.
   *
   * @param from s
   * @param until s
   */
  record Stretch(double from, double until) {
    boolean holds(double at) {
      return at >= from && at <= until;
    }
  }

  private Stretches() {}

  /**
   * Stretches in which something that was recorded still swings when what was done should be over.
   *
   * @param drive what was done
   */
  static List<Stretch> of(Recording recording, Drive drive) {
    List<Stretch> found = new ArrayList<>();
    double now = 0;
    double stood = 0;
    List<Drive.Span> spans = drive.spans();
    for (int i = 0; i < spans.size(); i++) {
      Drive.Span span = spans.get(i);
      now += span.seconds();
      boolean stands = span.begins().equals(span.ends());
      boolean goesOn =
          stands && i + 1 < spans.size() && spans.get(i + 1).begins().equals(span.ends());
      if (goesOn) {
        continue;
      }
      Stretch stretch = new Stretch(stood + Math.max(SOONEST, SETTLED * (now - stood)), now);
      if (stands && swings(recording, stretch)) {
        found.add(stretch);
      }
      stood = now;
    }
    return found;
  }

  private static boolean swings(Recording recording, Stretch stretch) {
    return recording.channels().stream().anyMatch(channel -> swings(channel, stretch));
  }

  private static boolean swings(Recording.Channel channel, Stretch stretch) {
    double from = Math.max(stretch.from(), channel.from());
    double until = Math.min(stretch.until(), channel.until());
    if (until - from < SHORTEST) {
      return false;
    }
    double middle = (from + until) / 2;
    double least = SEEN * noise(channel);
    Wave whole = wave(channel, from, until);
    double early = wave(channel, from, middle).size();
    double late = wave(channel, middle, until).size();
    return whole.crossings() >= CROSSINGS
        && Math.max(early, late) > Math.max(least, BENDS * whole.size());
  }

  /** What swings a needle that stands still would seem to make, Pa or K. */
  static double noise(Recording.Channel channel) {
    if (channel.about() instanceof About.Needle needle) {
      Gauge gauge = needle.gauge();
      return Math.hypot(gauge.each(), gauge.step() / Math.sqrt(12));
    }
    return (channel.about().temperature() ? Unknowns.THERMOMETER : Unknowns.TEST_GAUGE) / 3;
  }

  /** What was recorded in a stretch, as often as it was; nothing where there is a gap. */
  static Wave wave(Recording.Channel channel, double from, double until) {
    double first = Math.max(from, channel.from());
    double last = Math.min(until, channel.until());
    int n = (int) Math.min(MOST, Math.floor((last - first) / channel.step() + 1e-6) + 1);
    if (!(last > first) || n < 3) {
      return Wave.NONE;
    }
    double[] seconds = new double[n];
    double[] values = new double[n];
    for (int i = 0; i < n; i++) {
      seconds[i] = first + (last - first) * i / (n - 1);
      values[i] = channel.at(seconds[i], Instants.GAP);
    }
    boolean gap = Arrays.stream(values).anyMatch(Double::isNaN);
    return gap ? Wave.NONE : Wave.of(seconds, values);
  }
}
