package dev.offtake.profile;

import dev.offtake.network.Network;
import dev.offtake.part.Part;
import dev.offtake.part.Role;
import dev.offtake.solve.Quantity;
import dev.offtake.time.Played;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A valve that swings and does not come to rest.
 *
 * <p>Found in the course of its opening: turning points that lie apart by more than is noise, at
 * about equal distances in time, whose swing does not fade. Fading swings are a valve that settles.
 *
 * @param valve full name
 * @param from when it began, s
 * @param until its last turning point, s
 * @param swing from stop to stop, as a share of the stroke
 * @param hertz swings in a second
 * @param point the point at its outlet
 * @param pressure from least to most pressure there, Pa
 */
public record Hunt(
    String valve,
    double from,
    double until,
    double swing,
    double hertz,
    String point,
    double pressure) {
  /** Swings of less are not told, as a share of the stroke. */
  static final double LEAST = 0.005;

  /** A swing that moves the pressure ahead by less is not seen on any gauge, Pa (0.25 psi). */
  private static final double SEEN = 1724;

  /** What swings faster flutters, Hz. */
  private static final double QUICKEST = 25;

  /** As many turning points must follow each other. */
  private static final int TURNS = 7;

  /** Swings that fade to less than this share within {@value #TURNS} turns settle. */
  private static final double FADES = 0.7;

  /** A turning point that comes later than this many usual distances begins anew. */
  private static final double GAP = 3;

  private static final String OPENING = "opening";

  /** A turning point of a course. */
  record Turn(double at, double value) {}

  /** All hunts of a network, the one that moves most pressure first. */
  public static List<Hunt> of(Network network, Played played) {
    List<Integer> valves = new ArrayList<>();
    List<Quantity> what = new ArrayList<>();
    for (int i = 0; i < network.parts().size(); i++) {
      Part part = network.parts().get(i);
      int opening = part.observables().indexOf(OPENING);
      if (part.role() == Role.VALVE && opening >= 0) {
        valves.add(i);
        what.add(Quantity.observed(i, opening));
        what.add(pressure(network, outlet(part)));
      }
    }
    double[] times = played.instants();
    double[][] course = played.course(what, times);
    List<Hunt> hunts = new ArrayList<>();
    for (int k = 0; k < valves.size(); k++) {
      Part part = network.parts().get(valves.get(k));
      hunts.addAll(in(part.name(), outlet(part), times, course[2 * k], course[2 * k + 1]));
    }
    // What moves the air most is most likely what drives the others.
    hunts.sort(Comparator.comparingDouble((Hunt hunt) -> -hunt.pressure()));
    return hunts;
  }

  private static String outlet(Part part) {
    return part.legs().get(0).to();
  }

  /** Pressure at a point; nothing where it is no inner one. */
  private static Quantity pressure(Network network, String point) {
    int number = network.point(point);
    return number >= 0 ? Quantity.sensed(number) : Quantity.pressure(0);
  }

  /**
   * Hunts in a course.
   *
   * @param valve full name
   * @param point at its outlet
   * @param times s, rising
   * @param opening at each time, as a share of the stroke
   * @param pressure at the outlet, Pa
   */
  static List<Hunt> in(
      String valve, String point, double[] times, double[] opening, double[] pressure) {
    List<Hunt> hunts = new ArrayList<>();
    for (List<Turn> run : runs(turns(times, opening, LEAST))) {
      if (lasting(run)) {
        double from = run.get(0).at();
        double until = run.get(run.size() - 1).at();
        double hertz = (run.size() - 1) / 2.0 / (until - from);
        double swing = mean(run, run.size() - TURNS);
        double swings = span(times, pressure, run.get(run.size() - TURNS).at(), until);
        if (swings >= SEEN && hertz <= QUICKEST) {
          hunts.add(new Hunt(valve, from, until, swing, hertz, point, swings));
        }
      }
    }
    return hunts;
  }

  /** Turning points between which a course moves by more than some noise. */
  static List<Turn> turns(double[] times, double[] values, double noise) {
    List<Turn> turns = new ArrayList<>();
    int low = 0;
    int high = 0;
    int way = 0;
    for (int i = 1; i < values.length; i++) {
      low = values[i] < values[low] ? i : low;
      high = values[i] > values[high] ? i : high;
      if (way >= 0 && values[i] < values[high] - noise) {
        turns.add(new Turn(times[high], values[high]));
        way = -1;
        low = i;
      } else if (way <= 0 && values[i] > values[low] + noise) {
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
      } else if (run.size() == 2 && gap * GAP < usual) {
        // The first point was the end of something slower.
        run.remove(0);
      }
      usual = run.size() < 2 ? gap : usual + (gap - usual) / 3;
      run.add(turn);
    }
    runs.add(run);
    return runs;
  }

  private static boolean lasting(List<Turn> run) {
    if (run.size() < TURNS) {
      return false;
    }
    double last = size(run, run.size() - 1);
    double before = size(run, run.size() - TURNS + 1);
    return last > FADES * before;
  }

  private static double size(List<Turn> run, int turn) {
    return Math.abs(run.get(turn).value() - run.get(turn - 1).value());
  }

  /** Mean swing from a turning point on. */
  private static double mean(List<Turn> run, int first) {
    double sum = 0;
    for (int i = first + 1; i < run.size(); i++) {
      sum += size(run, i);
    }
    return sum / (run.size() - 1 - first);
  }

  private static double span(double[] times, double[] values, double from, double until) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < times.length; i++) {
      if (times[i] >= from && times[i] <= until) {
        low = Math.min(low, values[i]);
        high = Math.max(high, values[i]);
      }
    }
    return high - low;
  }
}
