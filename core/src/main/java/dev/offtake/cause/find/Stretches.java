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
   * @param until s, when something is done again
   * @param period s, of the slowest of its swings
   */
  record Stretch(double from, double until, double period) {
    /**
     * Whether a course keeps no step with a record at an instant. What is done at the end meets a
     * swing somewhere on its way, so that it runs on otherwise for one more swing.
     */
    boolean holds(double at) {
      return at >= from && at <= until + period;
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
      if (stands && i + 1 < spans.size() && goesOn(span, spans.get(i + 1))) {
        continue;
      }
      double from = stood + Math.max(SOONEST, SETTLED * (now - stood));
      double period = stands ? period(recording, from, now) : 0;
      if (period > 0) {
        found.add(new Stretch(from, now, period));
      }
      stood = now;
    }
    return found;
  }

  /** Whether the next span stands where this one does: one that begins there may leave it. */
  private static boolean goesOn(Drive.Span span, Drive.Span next) {
    return next.begins().equals(span.ends()) && next.ends().equals(span.ends());
  }

  /** The period of the slowest that swings, s; 0 where nothing does. */
  private static double period(Recording recording, double from, double until) {
    return recording.channels().stream()
        .mapToDouble(channel -> period(channel, from, until))
        .max()
        .orElse(0);
  }

  /** The period of a channel, s; 0 where it does not swing. */
  private static double period(Recording.Channel channel, double first, double last) {
    double from = Math.max(first, channel.from());
    double until = Math.min(last, channel.until());
    if (until - from < SHORTEST) {
      return 0;
    }
    double middle = (from + until) / 2;
    double least = SEEN * noise(channel);
    Wave whole = wave(channel, from, until);
    double early = wave(channel, from, middle).size();
    double late = wave(channel, middle, until).size();
    // What only comes to rest is still in the later half.
    boolean swings =
        whole.crossings() >= CROSSINGS
            && late > least
            && Math.max(early, late) > BENDS * whole.size();
    return swings ? 2 * (until - from) / whole.crossings() : 0;
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
