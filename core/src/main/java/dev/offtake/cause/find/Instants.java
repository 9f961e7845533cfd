package dev.offtake.cause.find;

import dev.offtake.cause.Recording;
import java.util.ArrayList;
import java.util.List;

/**
 * Chooses the instants of a recording that are weighed: half of them spread evenly over the time,
 * half over what moved, so that a handover of two seconds counts as much as a minute of rest.
 * Neighbours are far enough apart not to say the same twice.
 */
final class Instants {
  /** So many instants of a recording are weighed. */
  static final int MANY = 40;

  /** A recorder that was silent for longer has a gap, s. */
  static final double GAP = 3;

  /** Nearer instants than this say the same, s. */
  private static final double NEAR = 0.2;

  private static final int GRID = 800;

  private Instants() {}

  /**
   * Instants, rising, s; those of a single line where the recording has no more.
   *
   * @param swinging where it swings: no instant is spent there
   */
  static List<Double> of(Recording recording, List<Stretches.Stretch> swinging) {
    double from = Double.POSITIVE_INFINITY;
    double until = Double.NEGATIVE_INFINITY;
    for (Recording.Channel channel : recording.channels()) {
      from = Math.min(from, channel.from());
      until = Math.max(until, channel.until());
    }
    from = Math.max(0, from);
    until = Math.min(until, recording.profile().end());
    if (until <= from) {
      return List.of(from);
    }
    double[] way = way(recording, from, until, swinging);
    List<Double> instants = new ArrayList<>();
    int grid = 0;
    for (int i = 0; i < MANY; i++) {
      double wanted = way[GRID] * i / (MANY - 1.0);
      while (grid < GRID && way[grid + 1] < wanted) {
        grid++;
      }
      double at = from + (until - from) * Math.min(GRID, grid + 0.5) / GRID;
      boolean apart = instants.isEmpty() || at - instants.get(instants.size() - 1) >= NEAR;
      if (apart && !holds(swinging, at)) {
        instants.add(at);
      }
    }
    return instants;
  }

  /** How far everything has come, the passing of time counted as half of it. */
  private static double[] way(
      Recording recording, double from, double until, List<Stretches.Stretch> swinging) {
    double[] way = new double[GRID + 1];
    double[] weighed = new double[GRID + 1];
    for (int i = 1; i <= GRID; i++) {
      boolean holds = holds(swinging, from + (until - from) * i / GRID);
      weighed[i] = weighed[i - 1] + (holds ? 0 : 1);
    }
    for (Recording.Channel channel : recording.channels()) {
      double[] own = moved(channel, from, until, weighed);
      for (int i = 1; own[GRID] > 0 && i <= GRID; i++) {
        way[i] += own[i] / own[GRID] / recording.channels().size();
      }
    }
    for (int i = 1; weighed[GRID] > 0 && i <= GRID; i++) {
      way[i] += weighed[i] / weighed[GRID];
    }
    return way;
  }

  private static boolean holds(List<Stretches.Stretch> swinging, double at) {
    return swinging.stream().anyMatch(stretch -> stretch.holds(at));
  }

  /** How far a channel has come where it is weighed. */
  private static double[] moved(
      Recording.Channel channel, double from, double until, double[] weighed) {
    double[] moved = new double[GRID + 1];
    double last = Double.NaN;
    for (int i = 0; i <= GRID; i++) {
      double value = channel.at(from + (until - from) * i / GRID, GAP);
      boolean known = !Double.isNaN(value) && !Double.isNaN(last);
      double by = known && weighed[i] > weighed[i - 1] ? Math.abs(value - last) : 0;
      moved[i] = (i == 0 ? 0 : moved[i - 1]) + by;
      last = Double.isNaN(value) ? last : value;
    }
    return moved;
  }
}
