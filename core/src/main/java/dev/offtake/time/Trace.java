package dev.offtake.time;

import java.util.ArrayList;
import java.util.List;

/** The steps that were taken, each with a cubic between its ends. */
final class Trace {
  /**
   * What stands still from one jump to the next.
   *
   * @param number of the phase, from 0 on
   * @param stretch of the timetable
   * @param controls of all parts
   * @param because why each has its value
   */
  record Phase(int number, int stretch, double[] controls, String[][] because) {}

  /**
   * A step; one of no length is an instant.
   *
   * @param from s
   * @param to s
   * @param begin state and slopes there
   * @param end state and slopes there
   * @param phase that it belongs to
   */
  record Leg(double from, double to, Moment begin, Moment end, Phase phase) {
    /** Writes the slopes at an instant of it, which has a length. */
    void slopeAt(double time, double[] out) {
      double length = to - from;
      double share = Math.max(0, Math.min(1, (time - from) / length));
      for (int k = 0; k < out.length; k++) {
        out[k] = Step.cubicSlope(share, length, begin.y[k], begin.slope[k], end.y[k], end.slope[k]);
      }
    }

    /** Writes the state at an instant of it. */
    void at(double time, double[] y) {
      double length = to - from;
      double share = length > 0 ? Math.max(0, Math.min(1, (time - from) / length)) : 1;
      for (int k = 0; k < y.length; k++) {
        y[k] = Step.cubic(share, length, begin.y[k], begin.slope[k], end.y[k], end.slope[k]);
      }
    }
  }

  /** A state and how fast it moves. */
  static final class Moment {
    final double[] y;
    final double[] slope;

    Moment(double[] y, double[] slope) {
      this.y = y.clone();
      this.slope = slope.clone();
    }
  }

  /** A valve that swings too fast to be followed. */
  record Flutter(double seconds, int part, double hertz) {}

  private final List<Leg> legs = new ArrayList<>();
  private final List<Flutter> flutters = new ArrayList<>();
  private final List<Played.Unfollowed> unfollowed = new ArrayList<>();

  void add(Leg leg) {
    legs.add(leg);
  }

  void add(Flutter flutter) {
    flutters.add(flutter);
  }

  void add(Played.Unfollowed stretch) {
    unfollowed.add(stretch);
  }

  List<Leg> legs() {
    return legs;
  }

  List<Flutter> flutters() {
    return flutters;
  }

  List<Played.Unfollowed> unfollowed() {
    return unfollowed;
  }

  /** How far it goes, s. */
  double seconds() {
    return legs.isEmpty() ? 0 : legs.get(legs.size() - 1).to();
  }

  /** Number of the last leg that begins at or before an instant. */
  int leg(double time) {
    int low = 0;
    int high = legs.size() - 1;
    while (low < high) {
      int middle = (low + high + 1) >>> 1;
      if (legs.get(middle).from() <= time) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return low;
  }
}
