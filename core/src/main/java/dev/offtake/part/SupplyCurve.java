package dev.offtake.part;

/**
 * Flow of a supply over its gauge pressure: straight lines through points whose pressure falls strictly with flow. Above
 * the first point the first line goes on (until it reaches no flow), below the last the last line goes on.
 */
final class SupplyCurve {
  private final double[] pressure;
  private final double[] flow;

  /**
   * Makes a curve.
   *
   * @param pressure Pa gauge, strictly falling, two or more
   * @param flow kg/s, strictly rising, the first 0 or more
   */
  SupplyCurve(double[] pressure, double[] flow) {
    this.pressure = pressure.clone();
    this.flow = flow.clone();
  }

  /** Flow at a gauge pressure, kg/s; negative above the deadhead pressure. */
  double flow(double gauge) {
    int i = gap(gauge);
    return flow[i] + slope(i) * (gauge - pressure[i]);
  }

  /** Slope of {@link #flow}, kg/(s Pa), negative. */
  double slope(double gauge) {
    return slope(gap(gauge));
  }

  /** Gauge pressure without flow, Pa. */
  double deadhead() {
    return pressure[0] - flow[0] / slope(0);
  }

  /** Largest flow of the table, kg/s. */
  double most() {
    return flow[flow.length - 1];
  }

  private double slope(int i) {
    return (flow[i + 1] - flow[i]) / (pressure[i + 1] - pressure[i]);
  }

  private int gap(double gauge) {
    int i = 0;
    while (i < pressure.length - 2 && gauge < pressure[i + 1]) {
      i++;
    }
    return i;
  }
}
