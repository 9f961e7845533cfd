package dev.offtake.cause.find;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What a cause foretells over its extents: solved at a few places, straight in between.
 *
 * <p>Immutable. A place counts from 0 (least extent) to 1 (most); a cause without an extent has one
 * place.
 */
final class Course {
  /** Pieces between two neighbouring places. */
  private static final int PIECES = 24;

  private static final int PIECES_OF_TWO = 8;

  private final Cause cause;
  private final List<Point> points;
  private final List<Node> nodes;

  private Course(Cause cause, List<Point> points, List<Node> nodes) {
    this.cause = cause;
    this.points = points;
    this.nodes = nodes;
  }

  /** A place that was solved. */
  private record Node(double place, double[] forecast) {}

  /**
   * A place with what is foretold there.
   *
   * @param place for each extent
   * @param forecast of each clue
   * @param weight share of all extents that it stands for
   */
  record Point(double[] place, double[] forecast, double weight) {}

  /** Foretells at places. */
  @FunctionalInterface
  interface Solver {
    /** Forecast of each clue; empty where there is no answer. */
    Optional<double[]> at(double... place);
  }

  /** Solves a cause at evenly spread places. */
  static Optional<Course> of(Cause cause, int places, Solver solver) {
    return switch (cause.extents()) {
      case 0 -> solver.at().map(f -> new Course(cause, alone(f), List.of()));
      case 1 -> line(cause, List.of(), spread(places), solver);
      default -> plane(cause, spread(places), solver);
    };
  }

  private static List<Point> alone(double[] forecast) {
    return List.of(new Point(new double[0], forecast, 1));
  }

  private static List<Double> spread(int places) {
    List<Double> all = new ArrayList<>();
    for (int i = 0; i < places; i++) {
      all.add(i / (places - 1.0));
    }
    return all;
  }

  /** The same course, solved at more places; the same where it has not one extent. */
  Course with(List<Double> more, Solver solver) {
    return nodes.isEmpty() ? this : line(cause, nodes, more, solver).orElse(this);
  }

  private static Optional<Course> line(
      Cause cause, List<Node> known, List<Double> more, Solver solver) {
    List<Node> nodes = new ArrayList<>(known);
    for (double place : more) {
      solver.at(place).ifPresent(forecast -> nodes.add(new Node(place, forecast)));
    }
    if (nodes.isEmpty()) {
      return Optional.empty();
    }
    nodes.sort(Comparator.comparingDouble(Node::place));
    List<Point> points = new ArrayList<>();
    for (int i = 1; i < nodes.size(); i++) {
      between(nodes.get(i - 1), nodes.get(i), points);
    }
    if (points.isEmpty()) {
      Node only = nodes.get(0);
      points.add(new Point(new double[] {only.place()}, only.forecast(), 1));
    }
    return Optional.of(new Course(cause, points, List.copyOf(nodes)));
  }

  private static void between(Node from, Node to, List<Point> points) {
    double width = to.place() - from.place();
    for (int k = 0; k < PIECES; k++) {
      double share = (k + 0.5) / PIECES;
      double[] place = {from.place() + share * width};
      points.add(new Point(place, mix(from.forecast(), to.forecast(), share), width / PIECES));
    }
  }

  private static Optional<Course> plane(Cause cause, List<Double> spread, Solver solver) {
    int n = spread.size();
    double[][][] at = new double[n][n][];
    for (int i = 0; i < n; i++) {
      for (int k = 0; k < n; k++) {
        at[i][k] = solver.at(spread.get(i), spread.get(k)).orElse(null);
      }
    }
    List<Point> points = new ArrayList<>();
    for (int i = 1; i < n; i++) {
      for (int k = 1; k < n; k++) {
        double[][] corners = {at[i - 1][k - 1], at[i][k - 1], at[i - 1][k], at[i][k]};
        if (Arrays.stream(corners).allMatch(corner -> corner != null)) {
          tile(points, new double[] {spread.get(i - 1), spread.get(k - 1)}, 1.0 / (n - 1), corners);
        }
      }
    }
    return points.isEmpty() ? Optional.empty() : Optional.of(new Course(cause, points, List.of()));
  }

  private static void tile(List<Point> points, double[] from, double width, double[][] corners) {
    double weight = width * width / (PIECES_OF_TWO * PIECES_OF_TWO);
    for (int i = 0; i < PIECES_OF_TWO; i++) {
      for (int k = 0; k < PIECES_OF_TWO; k++) {
        double x = (i + 0.5) / PIECES_OF_TWO;
        double y = (k + 0.5) / PIECES_OF_TWO;
        double[] low = mix(corners[0], corners[1], x);
        double[] high = mix(corners[2], corners[3], x);
        double[] place = {from[0] + x * width, from[1] + y * width};
        points.add(new Point(place, mix(low, high, y), weight));
      }
    }
  }

  private static double[] mix(double[] a, double[] b, double share) {
    double[] out = new double[a.length];
    for (int i = 0; i < a.length; i++) {
      out[i] = a[i] + share * (b[i] - a[i]);
    }
    return out;
  }

  /** The course of another cause that foretells the same. */
  Course of(Cause other) {
    return new Course(other, points, nodes);
  }

  Cause cause() {
    return cause;
  }

  List<Point> points() {
    return points;
  }

  /** Judges whether two forecasts lie so far apart that nothing is known of what is between. */
  @FunctionalInterface
  interface Far {
    boolean apart(double[] one, double[] two);
  }

  /** Middles of the stretches whose ends lie far apart, but of those that are narrow already. */
  List<Double> rough(Far far, double narrow) {
    List<Double> middles = new ArrayList<>();
    for (int i = 1; i < nodes.size(); i++) {
      Node from = nodes.get(i - 1);
      Node to = nodes.get(i);
      if (to.place() - from.place() > narrow && far.apart(from.forecast(), to.forecast())) {
        middles.add((from.place() + to.place()) / 2);
      }
    }
    return middles;
  }

  /** Middles of the stretches between solved places that hold more than a share of some masses. */
  List<Double> finer(double[] mass, double share) {
    List<Double> middles = new ArrayList<>();
    for (int i = 1; i < nodes.size(); i++) {
      double own = 0;
      for (int k = 0; k < PIECES; k++) {
        own += mass[(i - 1) * PIECES + k];
      }
      if (own > share) {
        middles.add((nodes.get(i - 1).place() + nodes.get(i).place()) / 2);
      }
    }
    return middles;
  }
}
