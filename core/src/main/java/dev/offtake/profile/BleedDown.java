package dev.offtake.profile;

import dev.offtake.network.Network;
import dev.offtake.part.Leg;
import dev.offtake.quantity.Style;
import dev.offtake.solve.Quantity;
import dev.offtake.solve.Solution;
import dev.offtake.time.Drive;
import dev.offtake.time.Played;
import dev.offtake.time.Transient;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * How long trapped air takes to leave through whatever is open, after fuel is cut.
 *
 * <p>A pocket is a group of points that are open to each other when the engine stands: their
 * pressures are alike. It is down when its last point is. Leaks that the file does not state are
 * not there: a real pocket may fall sooner, or be fed by what nobody knows.
 *
 * @param off when fuel was cut, s
 * @param to the pressure that is waited for, Pa above the air outside
 * @param looked how long was looked at after fuel was cut, s
 * @param end how playing ended
 * @param resists why it could not go on; empty when it could
 * @param pockets by time, the slowest first
 * @param seconds how long each point takes after fuel is cut, s; infinite where it did not fall
 */
public record BleedDown(
    double off,
    double to,
    double looked,
    Played.End end,
    String resists,
    List<Pocket> pockets,
    List<Double> seconds) {

  /** So long is waited, s. */
  public static final double LONGEST = 3600;

  /** Points whose pressures differ by less belong together, Pa (0.3 psi). */
  private static final double ALIKE = 2068;

  /** A valve that is open by less parts two pockets, as a share of its stroke. */
  private static final double SHUT = 0.02;

  private static final int LOOKS = 400;

  /** Keeps its lists. */
  public BleedDown {
    pockets = List.copyOf(pockets);
    seconds = List.copyOf(seconds);
  }

  /**
   * Air that is shut in.
   *
   * @param points numbers of its points
   * @param names their names
   * @param begins highest pressure in it when the engine stands, Pa above the air outside
   * @param seconds how long it takes after fuel is cut, s; infinite where it did not fall
   * @param left pressure that is left when looking ends, Pa above the air outside
   */
  public record Pocket(
      List<Integer> points, List<String> names, double begins, double seconds, double left) {
    /** Keeps its lists. */
    public Pocket {
      points = List.copyOf(points);
      names = List.copyOf(names);
    }

    /** Whether it came down. */
    public boolean falls() {
      return Double.isFinite(seconds);
    }
  }

  /**
   * Lets a system bleed down.
   *
   * @param sequence a profile that ends shut down
   * @param off when fuel is cut, s
   * @param stands when the engine stands, s
   * @param to the pressure that is waited for, Pa above the air outside
   * @param goesOn asked after each step; false calls it off
   */
  public static BleedDown of(
      Sequence sequence, double off, double stands, double to, Transient.Listener goesOn) {
    double rest = Math.max(0, off + LONGEST - sequence.drive().seconds());
    Drive drive = sequence.drive().hold(rest);
    Played played = new Transient(sequence.network()).run(drive, sequence.settings(), goesOn);
    if (played.end() == Played.End.NO_START) {
      return new BleedDown(off, to, 0, played.end(), played.resists(), List.of(), List.of());
    }
    return new Falls(sequence, played, off, stands, to).bleedDown();
  }

  /** Reads the falling pressures of what was played. */
  private record Falls(Sequence sequence, Played played, double off, double stands, double to) {

    BleedDown bleedDown() {
      Network network = sequence.network();
      double ambient = sequence.drive().start().conditions().ambientP();
      double[] times = times();
      List<Quantity> what =
          IntStream.range(0, network.points().size()).mapToObj(Quantity::sensed).toList();
      double[][] course = played.course(what, times);
      List<Double> seconds = new ArrayList<>();
      for (double[] values : course) {
        seconds.add(down(times, values, ambient + to));
      }
      return new BleedDown(
          off,
          to,
          played.seconds() - off,
          played.end(),
          played.resists(),
          pockets(network, ambient, seconds),
          seconds);
    }

    /** Close together at first, then ever wider apart. */
    private double[] times() {
      double length = Math.max(1, played.seconds() - off);
      double[] times = new double[LOOKS + 1];
      for (int i = 0; i <= LOOKS; i++) {
        times[i] = off + 0.1 * Math.expm1(i * Math.log1p(10 * length) / LOOKS);
      }
      return times;
    }

    /** When a falling course is below a value for good, s after fuel was cut. */
    private double down(double[] times, double[] values, double limit) {
      int last = values.length - 1;
      while (last >= 0 && values[last] <= limit) {
        last--;
      }
      if (last == values.length - 1) {
        return Double.POSITIVE_INFINITY;
      }
      if (last < 0) {
        return 0;
      }
      double share = (values[last] - limit) / (values[last] - values[last + 1]);
      return times[last] + share * (times[last + 1] - times[last]) - off;
    }

    private List<Pocket> pockets(Network network, double ambient, List<Double> seconds) {
      Solution standing = played.at(Math.min(stands, played.seconds()));
      Solution last = played.at(played.seconds());
      int[] group = groups(network, standing);
      List<Pocket> pockets = new ArrayList<>();
      for (int root = 0; root < group.length; root++) {
        Pocket pocket = pocket(network, group, root, standing, last, ambient, seconds);
        // What is down before the engine stands follows the engine and is shut in nowhere.
        if (!pocket.points().isEmpty() && pocket.begins() > to) {
          pockets.add(pocket);
        }
      }
      pockets.sort((one, two) -> Double.compare(two.seconds(), one.seconds()));
      return pockets;
    }

    private static Pocket pocket(
        Network network,
        int[] group,
        int root,
        Solution standing,
        Solution last,
        double ambient,
        List<Double> seconds) {
      List<Integer> points = new ArrayList<>();
      List<String> names = new ArrayList<>();
      double begins = Double.NEGATIVE_INFINITY;
      double left = Double.NEGATIVE_INFINITY;
      double longest = 0;
      for (int i = 0; i < group.length; i++) {
        if (group[i] == root) {
          points.add(i);
          names.add(network.points().get(i).name());
          begins = Math.max(begins, standing.sensed(i) - ambient);
          left = Math.max(left, last.sensed(i) - ambient);
          longest = Math.max(longest, seconds.get(i));
        }
      }
      return new Pocket(points, names, begins, longest, left);
    }

    /** For each point the least number of those that it is open to. */
    private static int[] groups(Network network, Solution standing) {
      int[] group = IntStream.range(0, network.points().size()).toArray();
      boolean moved = true;
      while (moved) {
        moved = false;
        for (int i = 0; i < network.parts().size(); i++) {
          for (Leg leg : open(standing, i) ? network.parts().get(i).legs() : List.<Leg>of()) {
            moved |= join(network, standing, group, leg);
          }
        }
      }
      return group;
    }

    /** Whether air passes a part in either direction; two pockets may be alike by chance. */
    private static boolean open(Solution standing, int part) {
      String name = standing.network().parts().get(part).name();
      double opening = standing.view(part, Style.SHOP).observed(name, "opening");
      return Double.isNaN(opening) || opening > SHUT;
    }

    private static boolean join(Network network, Solution standing, int[] group, Leg leg) {
      int from = network.point(leg.from());
      int to = network.point(leg.to());
      if (from < 0 || to < 0 || group[from] == group[to]) {
        return false;
      }
      if (Math.abs(standing.pressure(from) - standing.pressure(to)) > ALIKE) {
        return false;
      }
      int least = Math.min(group[from], group[to]);
      group[from] = least;
      group[to] = least;
      return true;
    }
  }
}
