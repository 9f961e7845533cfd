package dev.offtake.measure.cases;

/**
 * Pressures and temperatures of the points of one side.
 *
 * @param p Pa
 * @param t K
 */
record Points(double[] p, double[] t) {
  static final int MID = 0;
  static final int HIGH = 1;
  static final int INTERSTAGE = 2;
  static final int REGULATED = 3;
  static final int DUCT = 4;
  static final int COUNT = 5;

  /** Unknowns of a side: logarithms of pressures, then temperatures in units of 400 K. */
  static final int UNKNOWNS = 2 * COUNT;

  static final double WARM = 400;
  private static final double BAR = 1e5;

  /** Reads a side out of all unknowns. */
  static Points of(double[] unknowns, Side side) {
    int first = side.pick(0, 1) * UNKNOWNS;
    double[] p = new double[COUNT];
    double[] t = new double[COUNT];
    for (int i = 0; i < COUNT; i++) {
      p[i] = BAR * Math.exp(unknowns[first + i]);
      t[i] = WARM * Math.max(0.3, unknowns[first + COUNT + i]);
    }
    return new Points(p, t);
  }

  /** Writes a side into all unknowns. */
  void into(double[] unknowns, Side side) {
    int first = side.pick(0, 1) * UNKNOWNS;
    for (int i = 0; i < COUNT; i++) {
      unknowns[first + i] = Math.log(p[i] / BAR);
      unknowns[first + COUNT + i] = t[i] / WARM;
    }
  }
}
