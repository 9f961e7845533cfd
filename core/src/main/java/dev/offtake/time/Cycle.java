package dev.offtake.time;

import dev.offtake.network.Network;
import dev.offtake.part.Leg;
import dev.offtake.part.Part;
import dev.offtake.part.Role;
import dev.offtake.solve.Quantity;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * A swing of a valve that does not fade: a limit cycle, or one that still grows. A valve that does
 * so hunts.
 *
 * <p>Found in the course of its opening: turning points at about equal distances in time, whose
 * swing does not fade. It counts where a gauge at the outlet would show it, or the valve itself.
 *
 * @param part full name of the valve
 * @param from when it began, s
 * @param until when it ended, s: its last turning point, or the end of a stretch in which it was no
 *     longer followed
 * @param followed until when its swings were followed, s; later ones were taken to be like the last
 * @param hertz swings in a second
 * @param swing from end to end, as a share of the stroke
 * @param point where it leads to; empty for the air outside
 * @param pressure from least to most pressure there, Pa
 * @param grows whether it still grew at its end
 * @param driver the valve that drives it: itself, or one that swings with it and moves the pressure
 *     more than twice as much
 */
public record Cycle(
    String part,
    double from,
    double until,
    double followed,
    double hertz,
    double swing,
    String point,
    double pressure,
    boolean grows,
    String driver) {
  /** A swing of the pressure at the outlet that a gauge shows, Pa (0.5 psi). */
  private static final double SEEN = 3447.4;

  /** A swing of the valve that is seen at the valve itself, as a share of the stroke. */
  private static final double MOVES = 0.02;

  /** What swings faster flutters, Hz. */
  private static final double QUICKEST = 25;

  /** As many turning points must follow each other: three swings. */
  private static final int TURNS = 7;

  /** Swings whose size and time are told: the last so many half ones. */
  private static final int TOLD = 12;

  /** A swing that is less than this share of what it was half of its life ago fades. */
  private static final double FADES = 0.8;

  /** One that is less than this share of what it was falls. */
  private static final double FALLS = 0.97;

  /** A swing that is more than this share of what it was grows. */
  private static final double GROWS = 1.1;

  /** A turning point that comes later than this many usual distances begins anew. */
  private static final double GAP = 3;

  /** One that comes in less than the usual distance by this factor does so too. */
  private static final double SOONER = 5;

  /**
   * Ways between turning points that count, as a share of the stroke: first large ones, for a
   * ripple on a large swing is not another swing; where there are none, small ones.
   */
  private static final double[] WAYS = {0.005, 3e-4};

  /** Valves whose frequencies differ by a smaller share swing together. */
  private static final double TOGETHER = 0.2;

  /** One that moves the pressure less than this share of what another moves does not drive it. */
  private static final double DRIVES = 0.5;

  /** Fewer instants from one turning point to the next do not show a swing. */
  private static final long LOOKS_A_TURN = 3;

  private static final String OPENING = "opening";

  /** A turning point of a course. */
  record Turn(double at, double value) {}

  /** Whether it drives itself. */
  public boolean drives() {
    return part.equals(driver);
  }

  /** All of what was played, the one that moves most pressure first. */
  public static List<Cycle> in(Played played, Network network) {
    return in(played, network, 0, played.seconds());
  }

  /**
   * Those of a stretch of time, the one that moves most pressure first. Swings that steps did not
   * follow are not found; see the package.
   *
   * @param played all of it or a part
   * @param network that was played
   * @param from where the stretch begins, s
   * @param until where it ends, s
   */
  public static List<Cycle> in(Played played, Network network, double from, double until) {
    List<Part> valves = new ArrayList<>();
    List<Quantity> what = new ArrayList<>();
    for (int p = 0; p < network.parts().size(); p++) {
      Part part = network.parts().get(p);
      int opening = part.observables().indexOf(OPENING);
      if (part.role() == Role.VALVE && opening >= 0) {
        int to = network.point(part.legs().get(0).to());
        valves.add(part);
        what.add(Quantity.observed(p, opening));
        what.add(to < 0 ? Quantity.observed(p, opening) : Quantity.sensed(to));
      }
    }
    double[] times =
        Arrays.stream(played.instants())
            .filter(at -> at >= from && at <= until && followed(at, played.unfollowed()))
            .toArray();
    double[][] course = played.course(what, times);
    List<Cycle> found = new ArrayList<>();
    for (int v = 0; v < valves.size(); v++) {
      String to = valves.get(v).legs().get(0).to();
      boolean outside = to.equals(Leg.AMBIENT);
      Course own = new Course(times, course[2 * v], outside ? new double[0] : course[2 * v + 1]);
      List<Cycle> cycles = own.cycles(valves.get(v).name(), outside ? "" : to);
      found.addAll(goOn(cycles, played.unfollowed()));
    }
    return driven(found);
  }

  private static boolean followed(double at, List<Played.Unfollowed> stretches) {
    return stretches.stream().noneMatch(one -> at > one.from() && at < one.until());
  }

  /** Leads cycles on through stretches in which they were no longer followed. */
  private static List<Cycle> goOn(List<Cycle> cycles, List<Played.Unfollowed> stretches) {
    List<Cycle> longer = new ArrayList<>();
    for (Cycle cycle : cycles) {
      Cycle before = longer.isEmpty() ? cycle : longer.get(longer.size() - 1);
      boolean again =
          before.until > before.followed && cycle.from - before.until < TURNS / cycle.hertz;
      if (again) {
        longer.remove(longer.size() - 1);
      }
      Cycle one = again ? cycle.with(before.from, cycle.until) : cycle;
      for (Played.Unfollowed stretch : stretches) {
        boolean on = Math.abs(stretch.from() - one.followed) < 1.5 / one.hertz;
        one = on ? one.with(one.from, stretch.until()) : one;
      }
      longer.add(one);
    }
    return longer;
  }

  private Cycle with(double begins, double ends) {
    return new Cycle(part, begins, ends, followed, hertz, swing, point, pressure, grows, driver);
  }

  /** Names what drives each, and puts the one that moves most pressure first. */
  private static List<Cycle> driven(List<Cycle> cycles) {
    List<Cycle> sorted = new ArrayList<>(cycles);
    sorted.sort(Comparator.comparingDouble((Cycle cycle) -> -cycle.pressure));
    return sorted.stream().map(cycle -> cycle.drivenBy(sorted)).toList();
  }

  private Cycle drivenBy(List<Cycle> sorted) {
    for (Cycle other : sorted) {
      boolean together =
          other.from < until
              && from < other.until
              && Math.abs(other.hertz - hertz) < TOGETHER * other.hertz;
      if (together && pressure < DRIVES * other.pressure) {
        return new Cycle(
            part, from, until, followed, hertz, swing, point, pressure, grows, other.part);
      }
    }
    return this;
  }

  /**
   * How a valve moved.
   *
   * @param times s, rising
   * @param opening at each time, as a share of the stroke
   * @param pressure at its outlet, Pa; empty for the air outside
   */
  @SuppressWarnings("ArrayRecordComponent") // never compared
  record Course(double[] times, double[] opening, double[] pressure) {

    /** What does not fade in it, by time. */
    List<Cycle> cycles(String valve, String point) {
      List<Cycle> cycles = new ArrayList<>();
      List<Turn> finest = turns(times, opening, WAYS[WAYS.length - 1]);
      for (double way : WAYS) {
        for (List<Turn> run : runs(turns(times, opening, way))) {
          if (run.size() >= TURNS && lasts(run) && !diesAway(run, finest) && resolved(run)) {
            Cycle cycle = cycle(valve, point, run);
            boolean known =
                cycles.stream().anyMatch(one -> one.from < cycle.until && cycle.from < one.until);
            if (cycle.counts() && !known) {
              cycles.add(cycle);
            }
          }
        }
      }
      cycles.sort(Comparator.comparingDouble(Cycle::from));
      return cycles;
    }

    private Cycle cycle(String valve, String point, List<Turn> run) {
      int last = run.size() - 1;
      int first = Math.max(0, last - TOLD);
      double until = run.get(last).at();
      double hertz = (last - first) / 2.0 / (until - run.get(first).at());
      double swing = 0;
      for (int i = first + 1; i <= last; i++) {
        swing += size(run, i) / (last - first);
      }
      double moved = pressureSwing(run);
      boolean grows = stays(run) > GROWS;
      double from = run.get(0).at();
      return new Cycle(valve, from, until, until, hertz, swing, point, moved, grows, valve);
    }

    /** Whether steps followed it: what goes to and fro with each step is the method's. */
    private boolean resolved(List<Turn> run) {
      double from = run.get(0).at();
      double until = run.get(run.size() - 1).at();
      long looks = Arrays.stream(times).filter(at -> at >= from && at <= until).count();
      return looks >= LOOKS_A_TURN * (run.size() - 1);
    }

    /** From least to most pressure in the middle one of the last swings, Pa: without its drift. */
    private double pressureSwing(List<Turn> run) {
      int last = run.size() - 1;
      double[] spans = new double[TURNS - 2];
      for (int k = 0; k < spans.length; k++) {
        spans[k] = span(run.get(last - k - 2).at(), run.get(last - k).at());
      }
      Arrays.sort(spans);
      return spans[spans.length / 2];
    }

    /** From least to most pressure of one swing, beside a line from its first to its last value. */
    private double span(double from, double until) {
      int first = 0;
      while (first < pressure.length && times[first] < from) {
        first++;
      }
      int last = first;
      while (last + 1 < pressure.length && times[last + 1] <= until) {
        last++;
      }
      double low = 0;
      double high = 0;
      for (int i = first + 1; i < last; i++) {
        double share = (times[i] - times[first]) / (times[last] - times[first]);
        double off = pressure[i] - pressure[first] - share * (pressure[last] - pressure[first]);
        low = Math.min(low, off);
        high = Math.max(high, off);
      }
      return high - low;
    }
  }

  private boolean counts() {
    return hertz <= QUICKEST && (pressure >= SEEN || swing >= MOVES);
  }

  /** Turning points between which a course moves by more than some way. */
  static List<Turn> turns(double[] times, double[] values, double least) {
    List<Turn> turns = new ArrayList<>();
    int low = 0;
    int high = 0;
    int way = 0;
    for (int i = 1; i < values.length; i++) {
      low = values[i] < values[low] ? i : low;
      high = values[i] > values[high] ? i : high;
      if (way >= 0 && values[i] < values[high] - least) {
        turns.add(new Turn(times[high], values[high]));
        way = -1;
        low = i;
      } else if (way <= 0 && values[i] > values[low] + least) {
        turns.add(new Turn(times[low], values[low]));
        way = 1;
        high = i;
      }
      low = way > 0 ? i : low;
      high = way < 0 ? i : high;
    }
    return turns;
  }

  /** Turning points that follow each other at like distances. */
  private static List<List<Turn>> runs(List<Turn> turns) {
    List<List<Turn>> runs = new ArrayList<>();
    List<Turn> run = new ArrayList<>();
    double usual = 0;
    for (Turn turn : turns) {
      double gap = run.isEmpty() ? 0 : turn.at() - run.get(run.size() - 1).at();
      if (run.size() > 2 && gap > GAP * usual) {
        runs.add(run);
        run = new ArrayList<>();
      } else if (run.size() > 1 && gap * SOONER < usual) {
        // What came before was something slower.
        runs.add(run);
        run = new ArrayList<>(List.of(run.get(run.size() - 1)));
      }
      usual = run.size() < 2 ? gap : usual + (gap - usual) / 3;
      run.add(turn);
    }
    runs.add(run);
    return runs;
  }

  /** Half of its life ago, but three swings at least: one that fades slowly shows it then. */
  private static int earlier(List<Turn> run) {
    int last = run.size() - 1;
    return Math.max(1, last - Math.max(TURNS - 2, last / 2));
  }

  private static boolean lasts(List<Turn> run) {
    return stays(run) >= FADES;
  }

  /** How large it is at its end beside what it was. */
  private static double stays(List<Turn> run) {
    return about(run, run.size() - 2) / about(run, earlier(run));
  }

  /** Whether it was falling, and goes on with swings too small to belong to it. */
  private static boolean diesAway(List<Turn> run, List<Turn> finest) {
    double until = run.get(run.size() - 1).at();
    double next = (until - run.get(0).at()) / (run.size() - 1) * TURNS;
    long more = finest.stream().filter(t -> t.at() > until && t.at() < until + next).count();
    return stays(run) < FALLS && more >= TURNS - 2;
  }

  /** The middle one of three swings: the first and the last may be cut off by what is done. */
  private static double about(List<Turn> run, int turn) {
    int middle = Math.max(2, Math.min(run.size() - 2, turn));
    double[] sizes = {size(run, middle - 1), size(run, middle), size(run, middle + 1)};
    Arrays.sort(sizes);
    return sizes[1];
  }

  private static double size(List<Turn> run, int turn) {
    return Math.abs(run.get(turn).value() - run.get(turn - 1).value());
  }
}
