package dev.offtake.desk.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Cuts the routes around a point into pieces.
 *
 * <p>All routes begin at the point and share their way until they fork; a piece ends where wires
 * part, so that it can show the air of all wires behind it.
 */
final class PipeTree {
  private final int point;
  private final List<Piece> pieces = new ArrayList<>();

  /** A corner of a route. */
  private record Spot(double x, double y) {
    static Spot of(double x, double y) {
      return new Spot(Num.round(x), Num.round(y));
    }

    boolean between(Spot a, Spot b) {
      boolean upright = a.x == b.x && x == a.x && (y - a.y) * (y - b.y) < 0;
      boolean level = a.y == b.y && y == a.y && (x - a.x) * (x - b.x) < 0;
      return upright || level;
    }

    double far(Spot other) {
      return Math.abs(x - other.x) + Math.abs(y - other.y);
    }
  }

  private PipeTree(int point) {
    this.point = point;
  }

  /** Pieces of all points, in the order of the points. */
  static List<Piece> pieces(Placed placed) {
    Map<Integer, Map<Integer, List<Spot>>> byPoint = new LinkedHashMap<>();
    for (int box = 0; box < placed.plan().boxes().size(); box++) {
      if (placed.plan().boxes().get(box).point()) {
        byPoint.put(box, new LinkedHashMap<>());
      }
    }
    for (int i = 0; i < placed.plan().wires().size(); i++) {
      Wire wire = placed.plan().wires().get(i);
      Map<Integer, List<Spot>> routes = byPoint.get(wire.point());
      if (routes != null) {
        routes.put(i, course(placed, i));
      }
    }
    List<Piece> all = new ArrayList<>();
    byPoint.forEach((point, routes) -> all.addAll(cut(point, routes)));
    return all;
  }

  /** From the middle of the point to the symbol of the part. */
  private static List<Spot> course(Placed placed, int number) {
    Wire wire = placed.plan().wires().get(number);
    Placed.Route route = placed.routes().get(number);
    List<Spot> course = new ArrayList<>();
    course.add(Spot.of(placed.axis(wire.point()), placed.middle(wire.point())));
    for (int i = 0; i < route.x().length; i++) {
      course.add(Spot.of(route.x()[i], route.y()[i]));
    }
    Spot last = course.get(course.size() - 1);
    Spot end = end(placed, wire);
    if (last.x != end.x && last.y != end.y) {
      course.add(new Spot(last.x, end.y));
    }
    course.add(end);
    return course;
  }

  private static Spot end(Placed placed, Wire wire) {
    Box part = placed.plan().boxes().get(wire.part());
    return Spot.of(
        placed.x()[wire.part()] + part.meetX(wire.port()),
        placed.y()[wire.part()] + part.meetY(wire.port(), wire.leg()));
  }

  private static List<Piece> cut(int point, Map<Integer, List<Spot>> routes) {
    List<Spot> corners = routes.values().stream().flatMap(List::stream).distinct().toList();
    Map<Integer, List<Spot>> fine = new LinkedHashMap<>();
    routes.forEach((wire, course) -> fine.put(wire, split(course, corners)));
    PipeTree tree = new PipeTree(point);
    if (!fine.isEmpty()) {
      tree.grow(fine, 0, -1);
    }
    return tree.pieces;
  }

  /** The same course with every corner that lies on it. */
  private static List<Spot> split(List<Spot> course, List<Spot> corners) {
    List<Spot> fine = new ArrayList<>();
    for (int i = 0; i < course.size(); i++) {
      Spot here = course.get(i);
      if (i > 0) {
        Spot before = course.get(i - 1);
        corners.stream()
            .filter(c -> c.between(before, here))
            .sorted((a, b) -> Double.compare(a.far(before), b.far(before)))
            .forEach(fine::add);
      }
      if (fine.isEmpty() || !fine.get(fine.size() - 1).equals(here)) {
        fine.add(here);
      }
    }
    return fine;
  }

  /** Follows wires that share their way from a corner on. */
  private void grow(Map<Integer, List<Spot>> routes, int from, int before) {
    Map<Spot, Map<Integer, List<Spot>>> ways = new LinkedHashMap<>();
    routes.forEach(
        (wire, course) -> {
          if (from + 1 < course.size()) {
            ways.computeIfAbsent(course.get(from + 1), any -> new LinkedHashMap<>())
                .put(wire, course);
          }
        });
    ways.values().forEach(way -> follow(way, from, before));
  }

  private void follow(Map<Integer, List<Spot>> way, int from, int before) {
    int to = from + 1;
    while (together(way, to + 1)) {
      to++;
    }
    List<Spot> course = straight(way.values().iterator().next().subList(from, to + 1));
    pieces.add(
        new Piece(
            point,
            before,
            course.stream().mapToDouble(Spot::x).toArray(),
            course.stream().mapToDouble(Spot::y).toArray(),
            new ArrayList<>(way.keySet())));
    grow(way, to, pieces.size() - 1);
  }

  private static boolean together(Map<Integer, List<Spot>> way, int at) {
    return way.values().stream().allMatch(course -> at < course.size())
        && way.values().stream().map(course -> course.get(at)).distinct().count() == 1;
  }

  /** Without corners that are none. */
  private static List<Spot> straight(List<Spot> course) {
    List<Spot> kept = new ArrayList<>();
    for (int i = 0; i < course.size(); i++) {
      boolean inner = i > 0 && i < course.size() - 1;
      if (!inner || !course.get(i).between(kept.get(kept.size() - 1), course.get(i + 1))) {
        kept.add(course.get(i));
      }
    }
    return kept;
  }
}
