package dev.offtake.desk.drawing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What has to move together when a placed drawing is pushed together from left to right: boxes that
 * a straight pipe joins, and the upright pipes themselves.
 */
final class Blocks {
  /** An upright pipe of a point: all that stand at one place move together. */
  private record Upright(int point, long x) {}

  private final Placed placed;
  private final Map<Upright, Integer> uprights = new HashMap<>();
  private final List<Integer> parent = new ArrayList<>();
  private final List<Double> offset = new ArrayList<>();

  Blocks(Placed placed) {
    this.placed = placed;
    int boxes = placed.plan().boxes().size();
    for (int i = 0; i < boxes; i++) {
      add();
    }
    for (int i = 0; i < placed.routes().size(); i++) {
      Placed.Route route = placed.routes().get(i);
      Wire wire = placed.plan().wires().get(i);
      for (double x : route.x()) {
        uprights.computeIfAbsent(key(wire, x), any -> add());
      }
      tie(wire.point(), wire, route.x()[0]);
      tie(wire.part(), wire, route.x()[route.x().length - 1]);
    }
  }

  private int add() {
    parent.add(parent.size());
    offset.add(0.0);
    return parent.size() - 1;
  }

  private static Upright key(Wire wire, double x) {
    return new Upright(wire.point(), Math.round(10 * x));
  }

  /** A box and the pipe at its port move together. */
  private void tie(int box, Wire wire, double x) {
    int pipe = pipe(wire, x);
    double apart = x - placed.x()[box];
    int one = block(box);
    int other = block(pipe);
    if (one != other) {
      parent.set(other, one);
      offset.set(other, shift(box) + apart - shift(pipe));
    }
  }

  private int pipe(Wire wire, double x) {
    Integer number = uprights.get(key(wire, x));
    if (number == null) {
      throw new IllegalStateException("a pipe that was never met");
    }
    return number;
  }

  /** Number of the block that a member belongs to. */
  private int block(int member) {
    int at = member;
    while (parent.get(at) != at) {
      at = parent.get(at);
    }
    return at;
  }

  /** Where a member stands, seen from its block, px. */
  private double shift(int member) {
    double shift = 0;
    int at = member;
    while (parent.get(at) != at) {
      shift += offset.get(at);
      at = parent.get(at);
    }
    return shift;
  }

  int blockOfBox(int box) {
    return block(box);
  }

  double shiftOfBox(int box) {
    return shift(box);
  }

  int blockOfPipe(Wire wire, double x) {
    return block(pipe(wire, x));
  }

  double shiftOfPipe(Wire wire, double x) {
    return shift(pipe(wire, x));
  }

  /** How many members there are; blocks are numbered among them. */
  int size() {
    return parent.size();
  }

  /** All that takes room. */
  List<Strip> strips() {
    List<Strip> strips = new ArrayList<>();
    for (int i = 0; i < placed.plan().boxes().size(); i++) {
      Box box = placed.plan().boxes().get(i);
      double y = placed.y()[i];
      double left = shift(i);
      strips.add(new Strip(block(i), left, left + box.width(), y, y + box.height(), -1));
    }
    for (int i = 0; i < placed.routes().size(); i++) {
      pipes(strips, placed.plan().wires().get(i), placed.routes().get(i));
    }
    return strips.stream().distinct().toList();
  }

  private void pipes(List<Strip> strips, Wire wire, Placed.Route route) {
    for (int k = 1; k < route.x().length; k++) {
      if (route.upright(k)) {
        double at = shiftOfPipe(wire, route.x()[k]);
        double top = Math.min(route.y()[k], route.y()[k - 1]);
        double bottom = Math.max(route.y()[k], route.y()[k - 1]);
        int block = blockOfPipe(wire, route.x()[k]);
        strips.add(new Strip(block, at, at, top, bottom, wire.point()));
      }
    }
  }
}
