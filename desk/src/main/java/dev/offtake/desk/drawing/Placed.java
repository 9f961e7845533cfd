package dev.offtake.desk.drawing;

import java.util.List;

/**
 * A plan with places.
 *
 * @param plan what is placed
 * @param x left edge of each box, px
 * @param y upper edge of each box, px
 * @param routes of each wire, from the point to the part
 * @param width of the drawing, px
 * @param height of the drawing, px
 */
record Placed(Plan plan, double[] x, double[] y, List<Route> routes, double width, double height) {
  /** Keeps its routes. */
  Placed {
    routes = List.copyOf(routes);
  }

  /**
   * Corners of a wire.
   *
   * @param x of each corner, px
   * @param y of each corner, px
   */
  record Route(double[] x, double[] y) {
    /** Whether the stretch that ends at a corner is upright; rounding may lean it a little. */
    boolean upright(int corner) {
      return Math.abs(x[corner] - x[corner - 1]) < 0.05;
    }
  }

  /** Where the air passes through a box, px. */
  double axis(int box) {
    return x[box] + plan.boxes().get(box).axis();
  }

  /** Middle of the symbol of a box, px. */
  double middle(int box) {
    return y[box] + plan.boxes().get(box).middle();
  }
}
