package dev.offtake.time;

import dev.offtake.network.Network;
import dev.offtake.part.Leg;
import dev.offtake.part.Part;
import dev.offtake.part.Role;
import dev.offtake.solve.Quantity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A swing of a valve that does not fade: a limit cycle, or one that still grows.
 *
 * @param part full name of the valve
 * @param hertz how often it swings, Hz
 * @param stroke half of its swing, as a share of its stroke
 * @param point where it leads to; empty for the air outside
 * @param pressure half of the swing of the total pressure there, Pa
 * @param grows whether it still grows
 */
public record Cycle(
    String part, double hertz, double stroke, String point, double pressure, boolean grows) {
  /** A turn after less than this share of the stroke is none. */
  private static final double LEAST = 1e-3;

  /** Turns that make a cycle: three swings. */
  private static final int TURNS = 6;

  /** Share of a swing three swings earlier under which it fades. */
  private static final double FADES = 0.8;

  /** Share over which it grows. */
  private static final double GROWS = 1.1;

  /** Looks into each step this many times, so that no turn is missed. */
  private static final int LOOKS = 4;

  /**
   * Finds the valves that still swing at the end of a stretch of time, the one that swings most
   * first. Swings that steps did not follow are not found; see the package.
   *
   * @param played all of it or a part
   * @param network that was played
   * @param from where the stretch begins, s
   * @param until where it ends, s
   */
  public static List<Cycle> in(Played played, Network network, double from, double until) {
    double[] seconds = looks(played, from, until);
    List<Quantity> what = new ArrayList<>();
    List<Part> valves = new ArrayList<>();
    for (int p = 0; p < network.parts().size(); p++) {
      Part part = network.parts().get(p);
      if (part.role() == Role.VALVE) {
        valves.add(part);
        what.add(Quantity.observed(p, 0));
        int to = network.point(part.legs().get(0).to());
        what.add(to < 0 ? Quantity.observed(p, 0) : Quantity.pressure(to));
      }
    }
    double[][] course = played.course(what, seconds);
    List<Cycle> found = new ArrayList<>();
    for (int v = 0; v < valves.size(); v++) {
      add(found, valves.get(v), seconds, course[2 * v], course[2 * v + 1]);
    }
    found.sort(Comparator.comparingDouble((Cycle cycle) -> -cycle.stroke()));
    return found;
  }

  private static double[] looks(Played played, double from, double until) {
    List<Double> looks = new ArrayList<>();
    double before = from;
    for (double instant : played.instants()) {
      double end = Math.min(instant, until);
      for (int k = 1; k <= LOOKS && end > before; k++) {
        looks.add(before + (end - before) * k / LOOKS);
      }
      before = Math.max(before, end);
    }
    return looks.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private static void add(
      List<Cycle> found, Part valve, double[] seconds, double[] opening, double[] pressure) {
    List<Integer> turns = turns(opening);
    int last = turns.size() - 1;
    if (last < TURNS + 1) {
      return;
    }
    double period = 2 * (seconds[turns.get(last)] - seconds[turns.get(last - TURNS)]) / TURNS;
    boolean goesOn = seconds[seconds.length - 1] - seconds[turns.get(last)] < period;
    double now = Math.abs(opening[turns.get(last)] - opening[turns.get(last - 1)]);
    int early = last - TURNS;
    double then = Math.abs(opening[turns.get(early)] - opening[turns.get(early - 1)]);
    if (!goesOn || now < FADES * then) {
      return;
    }
    String to = valve.legs().get(0).to();
    boolean outside = to.equals(Leg.AMBIENT);
    double swing = outside ? 0 : swing(pressure, turns.get(last - 2), turns.get(last));
    found.add(
        new Cycle(valve.name(), 1 / period, now / 2, outside ? "" : to, swing, now > GROWS * then));
  }

  /** Where it turns round, each after a way that counts. */
  private static List<Integer> turns(double[] x) {
    List<Integer> turns = new ArrayList<>();
    int low = 0;
    int high = 0;
    int way = 0;
    for (int k = 1; k < x.length; k++) {
      low = x[k] < x[low] ? k : low;
      high = x[k] > x[high] ? k : high;
      if (way >= 0 && x[high] - x[k] > LEAST) {
        turns.add(high);
        way = -1;
        low = k;
      } else if (way <= 0 && x[k] - x[low] > LEAST) {
        turns.add(low);
        way = 1;
        high = k;
      }
    }
    return turns;
  }

  private static double swing(double[] x, int from, int to) {
    double least = x[from];
    double most = x[from];
    for (int k = from; k <= to; k++) {
      least = Math.min(least, x[k]);
      most = Math.max(most, x[k]);
    }
    return (most - least) / 2;
  }
}
