package dev.offtake.desk.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Places the boxes of a plan.
 *
 * <p>Each side is laid out alone first, as if it stood at the left, and turned so that what joins
 * it to the other comes to lie inwards. That gives an order from left to right: left sides, the
 * middle, right sides mirrored. In a second run over everything this order is kept within each
 * layer.
 */
final class Layout {
  private final Plan plan;
  private final Plan leftwards;
  private final Map<Integer, Double> across = new HashMap<>();

  private Layout(Plan plan) {
    this.plan = plan;
    leftwards = plan.leftwards();
  }

  /** Places all boxes. */
  static Placed of(Plan plan) {
    Placed placed = Compactor.of(placed(plan));
    double more = LooseMarks.height(plan.loose(), placed.width());
    return new Placed(
        plan, placed.x(), placed.y(), placed.routes(), placed.width(), placed.height() + more);
  }

  private static Placed placed(Plan plan) {
    Layout layout = new Layout(plan);
    List<Integer> all = IntStream.range(0, plan.boxes().size()).boxed().toList();
    Set<String> sides = new LinkedHashSet<>();
    plan.boxes().forEach(box -> sides.add(box.side()));
    if (sides.size() < 2) {
      return new Kernel(plan, all, false).placed();
    }
    layout.order(sides);
    List<Integer> order = new ArrayList<>(all);
    order.sort(Comparator.comparingDouble(layout::place));
    return new Kernel(plan, order, true).placed();
  }

  private double place(int box) {
    return across.getOrDefault(box, 0.0);
  }

  /** Gives each box its place across; sides follow one another. */
  private void order(Set<String> sides) {
    double left = -1e6;
    double right = 1e6;
    for (String side : sides) {
      if (side.isEmpty()) {
        continue;
      }
      List<Integer> own = of(side);
      boolean toLeft = plan.boxes().get(own.get(0)).column() == Box.Column.LEFT;
      double start = toLeft ? left : right;
      double width = side(own, toLeft, start);
      left += toLeft ? 2 * width : 0;
      right += toLeft ? 0 : 2 * width;
    }
    middle();
  }

  private List<Integer> of(String side) {
    return IntStream.range(0, plan.boxes().size())
        .filter(i -> plan.boxes().get(i).side().equals(side))
        .boxed()
        .toList();
  }

  /** Lays out one side with what joins it; returns its width, px. */
  private double side(List<Integer> own, boolean toLeft, double start) {
    List<Integer> joining =
        own.stream().filter(i -> of("").stream().anyMatch(j -> joined(i, j))).toList();
    Kernel kernel = new Kernel(leftwards, own, false);
    boolean inwardsIsRight = joining.isEmpty() || mean(kernel, joining) >= mean(kernel, own);
    boolean turned = toLeft != inwardsIsRight;
    double width = kernel.width();
    for (int box : own) {
      double at = kernel.x(box) + plan.boxes().get(box).width() / 2;
      across.put(box, start + (turned ? width - at : at));
    }
    return width;
  }

  private static double mean(Kernel kernel, List<Integer> boxes) {
    return boxes.stream().mapToDouble(kernel::x).average().orElse(0);
  }

  private boolean joined(int one, int other) {
    return plan.wires().stream()
        .anyMatch(
            w ->
                (w.point() == one && w.part() == other) || (w.point() == other && w.part() == one));
  }

  /** What lies between sides stands nearer to the side that it is joined to. */
  private void middle() {
    for (int box : of("")) {
      double lean = 0;
      for (Wire wire : plan.wires()) {
        if (wire.part() == box || wire.point() == box) {
          int other = wire.part() == box ? wire.point() : wire.part();
          lean += Math.signum(across.getOrDefault(other, 0.0));
        }
      }
      across.put(box, lean + box * 1e-3);
    }
  }
}
