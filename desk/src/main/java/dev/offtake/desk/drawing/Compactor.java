package dev.offtake.desk.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Pushes a placed drawing together from left to right without changing what stands left of what.
 *
 * <p>All that must hold is linear: something stands at least so far right of something else. The
 * places furthest left and those furthest right both hold, and so does their mean, which treats
 * both sides alike. From there blocks move, one after the other, to where their level pipes are
 * shortest.
 */
final class Compactor {
  private static final double MARGIN = 20;
  private static final int ROUNDS = 50;

  private final Placed placed;
  private final Blocks blocks;
  private final double[] now;
  private final double[] leftmost;
  private final double[] rightmost;
  private final List<List<Gap>> after = new ArrayList<>();
  private final List<List<Gap>> before = new ArrayList<>();
  private final Set<Level> levels = new LinkedHashSet<>();
  private final List<List<Level>> pulls = new ArrayList<>();
  private final List<Strip> strips;

  /** At least so far right of another block, px. */
  private record Gap(int left, int right, double least) {}

  /** A level pipe from a place of one block to a place of another, px. */
  private record Level(
      int left, double leftShift, int right, double rightShift, double y, int point) {}

  private Compactor(Placed placed) {
    this.placed = placed;
    blocks = new Blocks(placed);
    now = new double[blocks.size()];
    leftmost = new double[blocks.size()];
    rightmost = new double[blocks.size()];
    for (int i = 0; i < blocks.size(); i++) {
      after.add(new ArrayList<>());
      before.add(new ArrayList<>());
      pulls.add(new ArrayList<>());
    }
    strips = blocks.strips();
    for (Strip strip : strips) {
      leftmost[strip.block()] = Math.min(leftmost[strip.block()], strip.left());
      rightmost[strip.block()] = Math.max(rightmost[strip.block()], strip.right());
    }
    start();
    levels();
    keepOrder();
    keepLevelsApart();
  }

  /** The same drawing, narrower. */
  static Placed of(Placed placed) {
    return new Compactor(placed).run();
  }

  /** Where the blocks stand now. */
  private void start() {
    for (int i = 0; i < placed.plan().boxes().size(); i++) {
      now[blocks.blockOfBox(i)] = placed.x()[i] - blocks.shiftOfBox(i);
    }
    for (int i = 0; i < placed.routes().size(); i++) {
      Wire wire = placed.plan().wires().get(i);
      for (double x : placed.routes().get(i).x()) {
        now[blocks.blockOfPipe(wire, x)] = x - blocks.shiftOfPipe(wire, x);
      }
    }
  }

  private void levels() {
    for (int i = 0; i < placed.routes().size(); i++) {
      Wire wire = placed.plan().wires().get(i);
      Placed.Route route = placed.routes().get(i);
      for (int k = 1; k < route.x().length; k++) {
        if (!route.upright(k)) {
          double a = Math.min(route.x()[k], route.x()[k - 1]);
          double b = Math.max(route.x()[k], route.x()[k - 1]);
          levels.add(
              new Level(
                  blocks.blockOfPipe(wire, a),
                  blocks.shiftOfPipe(wire, a),
                  blocks.blockOfPipe(wire, b),
                  blocks.shiftOfPipe(wire, b),
                  route.y()[k],
                  wire.point()));
        }
      }
    }
    for (Level level : levels) {
      gap(level.left, level.right, level.leftShift - level.rightShift);
      pulls.get(level.left).add(level);
      pulls.get(level.right).add(level);
    }
  }

  private void keepOrder() {
    for (int i = 0; i < strips.size(); i++) {
      for (int k = 0; k < strips.size(); k++) {
        Strip a = strips.get(i);
        Strip b = strips.get(k);
        double between = now[b.block()] + b.left() - now[a.block()] - a.right();
        if (between >= 0 && a.block() != b.block() && a.level(b)) {
          gap(a.block(), b.block(), Math.min(a.apart(b), between) + a.right() - b.left());
        }
      }
    }
  }

  /** Level pipes of different points at one height do not run into each other. */
  private void keepLevelsApart() {
    for (Level a : levels) {
      for (Level b : levels) {
        double between = now[b.left] + b.leftShift - now[a.right] - a.rightShift;
        boolean near = Math.abs(a.y - b.y) < 12 && a.point != b.point;
        if (near && between >= 0 && a.right != b.left) {
          gap(a.right, b.left, Math.min(20, between) + a.rightShift - b.leftShift);
        }
      }
    }
  }

  private void gap(int one, int next, double least) {
    if (one != next) {
      Gap gap = new Gap(one, next, least);
      after.get(one).add(gap);
      before.get(next).add(gap);
    }
  }

  private Placed run() {
    double[] left = furthestLeft();
    double width = width(left);
    double[] right = furthestRight(width);
    double[] at = new double[now.length];
    for (int i = 0; i < at.length; i++) {
      at[i] = (left[i] + right[i]) / 2;
    }
    double[] one = at.clone();
    double[] other = at.clone();
    for (int round = 0; round < ROUNDS; round++) {
      for (int i = 0; i < at.length; i++) {
        shorten(one, i, width);
        shorten(other, at.length - 1 - i, width);
      }
    }
    for (int i = 0; i < at.length; i++) {
      at[i] = (one[i] + other[i]) / 2;
    }
    return moved(at, width);
  }

  private double[] furthestLeft() {
    double[] x = new double[now.length];
    for (Strip strip : strips) {
      x[strip.block()] = Math.max(x[strip.block()], MARGIN - strip.left());
    }
    boolean again = true;
    for (int round = 0; again && round < x.length; round++) {
      again = false;
      for (List<Gap> gaps : after) {
        for (Gap gap : gaps) {
          if (x[gap.right] < x[gap.left] + gap.least - 1e-9) {
            x[gap.right] = x[gap.left] + gap.least;
            again = true;
          }
        }
      }
    }
    return x;
  }

  private double width(double[] x) {
    double width = 0;
    for (Strip strip : strips) {
      width = Math.max(width, x[strip.block()] + strip.right());
    }
    return width + MARGIN;
  }

  private double[] furthestRight(double width) {
    double[] x = new double[now.length];
    Arrays.fill(x, width);
    for (Strip strip : strips) {
      x[strip.block()] = Math.min(x[strip.block()], width - MARGIN - strip.right());
    }
    boolean again = true;
    for (int round = 0; again && round < x.length; round++) {
      again = false;
      for (List<Gap> gaps : before) {
        for (Gap gap : gaps) {
          if (x[gap.left] > x[gap.right] - gap.least + 1e-9) {
            x[gap.left] = x[gap.right] - gap.least;
            again = true;
          }
        }
      }
    }
    return x;
  }

  /** Moves a block to the middle of where its level pipes pull it, as far as it may. */
  private void shorten(double[] x, int block, double width) {
    List<Level> own = pulls.get(block);
    if (own.isEmpty()) {
      return;
    }
    double[] wanted = new double[own.size()];
    for (int i = 0; i < wanted.length; i++) {
      Level level = own.get(i);
      wanted[i] =
          level.left == block
              ? x[level.right] + level.rightShift - level.leftShift
              : x[level.left] + level.leftShift - level.rightShift;
    }
    Arrays.sort(wanted);
    double aim = (wanted[(wanted.length - 1) / 2] + wanted[wanted.length / 2]) / 2;
    double least = Double.NEGATIVE_INFINITY;
    double most = Double.POSITIVE_INFINITY;
    for (Gap gap : before.get(block)) {
      least = Math.max(least, x[gap.left] + gap.least);
    }
    for (Gap gap : after.get(block)) {
      most = Math.min(most, x[gap.right] - gap.least);
    }
    least = Math.max(least, MARGIN - leftmost[block]);
    most = Math.min(most, width - MARGIN - rightmost[block]);
    x[block] = least > most ? x[block] : Math.min(most, Math.max(least, aim));
  }

  private Placed moved(double[] at, double width) {
    double[] x = new double[placed.x().length];
    for (int i = 0; i < x.length; i++) {
      x[i] = at[blocks.blockOfBox(i)] + blocks.shiftOfBox(i);
    }
    List<Placed.Route> routes = new ArrayList<>();
    for (int i = 0; i < placed.routes().size(); i++) {
      Wire wire = placed.plan().wires().get(i);
      Placed.Route old = placed.routes().get(i);
      double[] corners = new double[old.x().length];
      for (int k = 0; k < corners.length; k++) {
        corners[k] =
            at[blocks.blockOfPipe(wire, old.x()[k])] + blocks.shiftOfPipe(wire, old.x()[k]);
      }
      routes.add(new Placed.Route(corners, old.y()));
    }
    return new Placed(placed.plan(), x, placed.y(), routes, width, placed.height());
  }
}
