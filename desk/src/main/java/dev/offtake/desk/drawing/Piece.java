package dev.offtake.desk.drawing;

import java.util.List;

/**
 * A stretch of pipe that begins at a point or at a fork and carries the air of all wires behind it.
 *
 * @param point number of the point's box
 * @param before number of the piece of the same point that it follows; −1 at the point itself
 * @param x of each corner, counted from the point, px
 * @param y of each corner, px
 * @param wires numbers of the wires whose air it carries
 */
record Piece(int point, int before, double[] x, double[] y, List<Integer> wires) {
  /** Keeps its wires. */
  Piece {
    wires = List.copyOf(wires);
  }

  /** Its course as path data. */
  String path() {
    StringBuilder d = new StringBuilder();
    for (int i = 0; i < x.length; i++) {
      d.append(i == 0 ? 'M' : 'L').append(Num.of(x[i])).append(' ').append(Num.of(y[i]));
    }
    return d.toString();
  }

  /** Number of the longest straight stretch: it ends at this corner. */
  int longest() {
    int best = 1;
    for (int i = 2; i < x.length; i++) {
      best = length(i) > length(best) + 0.5 ? i : best;
    }
    return best;
  }

  /** Length of the stretch that ends at a corner, px. */
  double length(int corner) {
    return Math.abs(x[corner] - x[corner - 1]) + Math.abs(y[corner] - y[corner - 1]);
  }

  /**
   * A place on the stretch that ends at a corner, turned so that x runs along the pipe.
   *
   * @param corner where the stretch ends
   * @param share of its length
   */
  String turned(int corner, double share) {
    double dx = x[corner] - x[corner - 1];
    double dy = y[corner] - y[corner - 1];
    long angle = Math.round(Math.toDegrees(Math.atan2(dy, dx)));
    return "translate("
        + Num.of(x[corner - 1] + share * dx)
        + " "
        + Num.of(y[corner - 1] + share * dy)
        + ") rotate("
        + angle
        + ")";
  }
}
