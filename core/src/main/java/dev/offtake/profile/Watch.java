package dev.offtake.profile;

import dev.offtake.network.Network;
import dev.offtake.part.Facts;
import dev.offtake.part.LeakLoop;
import dev.offtake.part.OperatingLimit;
import dev.offtake.part.Parameter;
import dev.offtake.part.Part;
import dev.offtake.part.Trip;
import dev.offtake.quantity.Dimension;
import dev.offtake.solve.Quantity;
import dev.offtake.time.Played;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A limit that a trip, a leak loop or a relief valve watches, or that the file states.
 *
 * @param part full name of what watches
 * @param point number of the point that it feels
 * @param what it feels, such as {@code left duct temperature}
 * @param temperature whether it feels a temperature, else a pressure
 * @param upwards whether it acts above its limit, else below
 * @param limit K, or Pa absolute
 * @param delay how long the limit must be passed, s
 * @param stated whether the file states it and nothing acts on it
 * @param counts number of the part whose control says when it counts; −1 for always
 */
public record Watch(
    String part,
    int point,
    String what,
    boolean temperature,
    boolean upwards,
    double limit,
    double delay,
    boolean stated,
    int counts) {
  /** A limit that always counts. */
  private static final int ALWAYS = -1;

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
        add(
            all,
            new Watch(part.name(), point, what, true, true, alarm, loop.seconds(), false, ALWAYS));
      } else if (part instanceof OperatingLimit limit) {
        stated(network, limit, ambient, all);
      } else if (part.kind().equals("relief valve")) {
        String from = part.legs().get(0).from();
        double crack = number(part, "cracks at").value() + ambient;
        String what = from + " pressure";
        add(
            all,
            new Watch(
                part.name(), network.point(from), what, false, true, crack, 0, false, ALWAYS));
      }
    }
    return all;
  }

  private static void trip(Network network, Trip trip, double ambient, List<Watch> all) {
    for (int which : new int[] {trip.above(), trip.below()}) {
      if (which >= 0) {
        Parameter limit = trip.parameters().get(which);
        boolean up = which == trip.above();
        double value = absolute(limit, ambient);
        add(all, of(network, trip, trip.watches(), up, value, trip.delay(), false, ALWAYS));
      }
    }
  }

  private static void stated(
      Network network, OperatingLimit limit, double ambient, List<Watch> all) {
    int counts = limit.counts().rules().isEmpty() ? ALWAYS : network.part(limit.name());
    for (int which : new int[] {limit.most(), limit.least()}) {
      if (which >= 0) {
        boolean up = which == limit.most();
        double value = absolute(limit.parameters().get(which), ambient);
        add(all, of(network, limit, limit.watches(), up, value, limit.seconds(), true, counts));
      }
    }
  }

  private static double absolute(Parameter limit, double ambient) {
    return limit.value() + (limit.dimension() == Dimension.GAUGE_PRESSURE ? ambient : 0);
  }

  private static Watch of(
      Network network,
      Part part,
      Facts.Reading watches,
      boolean upwards,
      double limit,
      double delay,
      boolean stated,
      int counts) {
    return new Watch(
        part.name(),
        network.point(watches.point()),
        watches.name(),
        watches.temperature(),
        upwards,
        limit,
        delay,
        stated,
        counts);
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
   * What limits saw in a course, as long as they counted; those that never did are left out.
   *
   * @param watches the limits
   * @param played what was played
   * @param times at which it is looked at, s, rising
   */
  public static List<Seen> seen(List<Watch> watches, Played played, double[] times) {
    List<Watch> atTimes = watches.stream().filter(watch -> watch.counts() != ALWAYS).toList();
    List<Quantity> what = new ArrayList<>();
    watches.forEach(watch -> what.add(watch.quantity()));
    atTimes.forEach(watch -> what.add(Quantity.control(watch.counts(), 0)));
    double[][] course = played.course(what, times);
    List<Seen> seen = new ArrayList<>();
    for (int i = 0; i < watches.size(); i++) {
      int own = atTimes.indexOf(watches.get(i));
      double[] counts = own < 0 ? null : course[watches.size() + own];
      watches.get(i).seen(course[i], counts, times).ifPresent(seen::add);
    }
    return seen;
  }

  private Quantity quantity() {
    return temperature ? Quantity.temperature(point) : Quantity.sensed(point);
  }

  private Optional<Seen> seen(double[] values, double @Nullable [] counts, double[] times) {
    int sense = upwards ? 1 : -1;
    int first = -1;
    int best = -1;
    double longest = 0;
    double since = Double.NaN;
    for (int i = 0; i < values.length; i++) {
      boolean held = counts == null || counts[i] > 0;
      first = first < 0 && held ? i : first;
      best = held && (best < 0 || sense * values[i] > sense * values[best]) ? i : best;
      boolean over = held && sense * (values[i] - limit) > 0;
      since = over ? (Double.isNaN(since) ? times[i] : since) : Double.NaN;
      longest = over ? Math.max(longest, times[i] - since) : longest;
    }
    return best < 0
        ? Optional.empty()
        : Optional.of(new Seen(this, values[first], values[best], times[best], longest));
  }
}
