package dev.offtake.profile;

import dev.offtake.network.Network;
import dev.offtake.part.LeakLoop;
import dev.offtake.part.Parameter;
import dev.offtake.part.Part;
import dev.offtake.part.Trip;
import dev.offtake.quantity.Dimension;
import dev.offtake.solve.Quantity;
import dev.offtake.time.Played;
import java.util.ArrayList;
import java.util.List;

/**
 * A limit that a trip, a leak loop or a relief valve watches.
 *
 * @param part full name of what watches
 * @param point number of the point that it feels
 * @param what it feels, such as {@code left duct temperature}
 * @param temperature whether it feels a temperature, else a pressure
 * @param upwards whether it acts above its limit, else below
 * @param limit K, or Pa absolute
 * @param delay how long the limit must be passed, s
 */
public record Watch(
    String part,
    int point,
    String what,
    boolean temperature,
    boolean upwards,
    double limit,
    double delay) {

  /**
   * What a limit saw.
   *
   * @param watch the limit
   * @param first the value at the beginning, K or Pa absolute
   * @param most the value nearest to it or farthest beyond, K or Pa absolute
   * @param at when that was, s
   * @param beyond longest time without a break beyond the limit, s
   */
  public record Seen(Watch watch, double first, double most, double at, double beyond) {
    /** How far the value stayed from the limit, K or Pa; negative beyond it. */
    public double room() {
      return (watch.upwards() ? 1 : -1) * (watch.limit() - most);
    }
  }

  /**
   * The limits of a network.
   *
   * @param ambient air outside, Pa absolute
   */
  public static List<Watch> of(Network network, double ambient) {
    List<Watch> all = new ArrayList<>();
    for (Part part : network.parts()) {
      if (part instanceof Trip trip) {
        trip(network, trip, ambient, all);
      } else if (part instanceof LeakLoop loop) {
        int point = network.point(loop.zone());
        double alarm = loop.parameters().get(0).value();
        String what = loop.zone() + " temperature";
        add(all, new Watch(part.name(), point, what, true, true, alarm, loop.seconds()));
      } else if (part.kind().equals("relief valve")) {
        String from = part.legs().get(0).from();
        double crack = number(part, "cracks at").value() + ambient;
        String what = from + " pressure";
        add(all, new Watch(part.name(), network.point(from), what, false, true, crack, 0));
      }
    }
    return all;
  }

  private static void trip(Network network, Trip trip, double ambient, List<Watch> all) {
    int point = network.point(trip.watches().point());
    for (int which : new int[] {trip.above(), trip.below()}) {
      if (which >= 0) {
        Parameter limit = trip.parameters().get(which);
        boolean gauge = limit.dimension() == Dimension.GAUGE_PRESSURE;
        boolean up = which == trip.above();
        add(
            all,
            new Watch(
                trip.name(),
                point,
                trip.watches().name(),
                trip.watches().temperature(),
                up,
                limit.value() + (gauge ? ambient : 0),
                trip.delay()));
      }
    }
  }

  /** What lies at a boundary has no course. */
  private static void add(List<Watch> all, Watch watch) {
    if (watch.point() >= 0) {
      all.add(watch);
    }
  }

  private static Parameter number(Part part, String name) {
    return part.parameters().stream()
        .filter(parameter -> parameter.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  /**
   * What limits saw in a course.
   *
   * @param watches the limits
   * @param played what was played
   * @param times at which it is looked at, s, rising
   */
  public static List<Seen> seen(List<Watch> watches, Played played, double[] times) {
    List<Quantity> what = watches.stream().map(Watch::quantity).toList();
    double[][] course = played.course(what, times);
    List<Seen> seen = new ArrayList<>();
    for (int i = 0; i < watches.size(); i++) {
      seen.add(watches.get(i).seen(course[i], times));
    }
    return seen;
  }

  private Quantity quantity() {
    return temperature ? Quantity.temperature(point) : Quantity.sensed(point);
  }

  private Seen seen(double[] values, double[] times) {
    int sense = upwards ? 1 : -1;
    int best = 0;
    double longest = 0;
    double since = Double.NaN;
    for (int i = 0; i < values.length; i++) {
      best = sense * values[i] > sense * values[best] ? i : best;
      boolean over = sense * (values[i] - limit) > 0;
      since = over ? (Double.isNaN(since) ? times[i] : since) : Double.NaN;
      longest = over ? Math.max(longest, times[i] - since) : longest;
    }
    return new Seen(this, values[0], values[best], times[best], longest);
  }
}
