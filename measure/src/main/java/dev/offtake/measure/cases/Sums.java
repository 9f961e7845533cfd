package dev.offtake.measure.cases;

/** Sums of what flows into the points of one side: mass kg/s, and heat counted from each point. */
final class Sums {
  /** Rounds the corner where a flow turns, kg/s. */
  private static final double TURN = 1e-4;

  private final double[] t;
  private final double[] mass = new double[Points.COUNT];
  private final double[] heat = new double[Points.COUNT];
  private final double[] through = new double[Points.COUNT];

  Sums(Points at) {
    t = at.t();
  }

  /** A flow into a point from outside its side; negative out of it. */
  void from(int point, double heatOf, double flow) {
    mass[point] += flow;
    heat[point] += into(flow) * Gas.CP * (heatOf - t[point]);
    through[point] += Math.abs(flow) / 2;
  }

  /** A flow between two points. */
  void between(int from, int to, double flow) {
    cooled(from, to, flow, t[from]);
  }

  /** A flow between two points that arrives at the second with another temperature, K. */
  void cooled(int from, int to, double flow, double arrives) {
    from(to, arrives, flow);
    from(from, t[to], -flow);
  }

  /** Heat through a wall, W. */
  void wall(int point, double watts) {
    heat[point] += watts;
  }

  private static double into(double flow) {
    return 0.5 * (flow + Math.sqrt(flow * flow + TURN * TURN));
  }

  /** Flow through a point, kg/s. */
  double through(int point) {
    return through[point];
  }

  /** Puts the imbalance of mass and heat, in handy units, where the unknowns of the side stand. */
  void imbalance(double[] into, Side side) {
    int first = side.pick(0, 1) * Points.UNKNOWNS;
    for (int i = 0; i < Points.COUNT; i++) {
      into[first + i] = mass[i] / 0.1;
      into[first + Points.COUNT + i] = heat[i] / (0.1 * Gas.CP * Points.WARM);
    }
  }
}
