package dev.offtake.time;

import dev.offtake.network.PointSpec;
import java.util.List;

/**
 * The metal around the air of each point: it takes heat from the air and gives it to the
 * surroundings,
 *
 * <pre>
 *   C dT_w/dt = G_in (T − T_w) − G_out (T_w − T_surroundings)
 * </pre>
 *
 * with 1/G_in + 1/G_out the resistance that the point's wall has in the steady state. Assumptions:
 * the metal is that of a four-inch duct of the point's volume, of 0.8 mm steel (7900 kg/m³, 500
 * J/(kg K)), and 100 W/(m² K) reach it from the air (common practice, no source).
 */
final class Walls {
  /** Wall area of a cubic metre of four-inch duct, 1/m. */
  private static final double AREA = 4 / 0.1016;

  private static final double CAPACITY = 7900 * 500 * 0.0008 * AREA;
  private static final double INSIDE = 100 * AREA;

  private final double[] capacity;
  private final double[] inside;
  private final double[] outside;
  private final double[] steady;
  private final double[] kept;
  private double inverse;
  private double surroundings;

  Walls(List<PointSpec> points) {
    int n = points.size();
    capacity = new double[n];
    inside = new double[n];
    outside = new double[n];
    steady = new double[n];
    kept = new double[n];
    for (int i = 0; i < n; i++) {
      double volume = AirInTime.volume(points.get(i));
      steady[i] = points.get(i).wall();
      capacity[i] = CAPACITY * volume;
      inside[i] = Math.max(INSIDE * volume, 2 * steady[i]);
      outside[i] = 1 / (1 / steady[i] - 1 / inside[i]);
    }
  }

  /** Prepares a stage. */
  void begin(double newInverse, double newSurroundings, double[] before, int first) {
    inverse = newInverse;
    surroundings = newSurroundings;
    System.arraycopy(before, first, kept, 0, kept.length);
  }

  /** Temperature of the wall at the end of the stage, K. */
  double temperature(int point, double t) {
    double stores = capacity[point] * inverse;
    double sum = stores * kept[point] + inside[point] * t + outside[point] * surroundings;
    return sum / (stores + inside[point] + outside[point]);
  }

  /** Slope of that by the temperature of the air. */
  double slope(int point) {
    return inside[point] / (capacity[point] * inverse + inside[point] + outside[point]);
  }

  /** Temperature of the wall in the steady state, K. */
  double settled(int point, double t, double around) {
    return around + (t - around) * inside[point] / (inside[point] + outside[point]);
  }

  /** Heat that the air loses to the wall, less what the steady law says, W. */
  double excess(int point, double t, double wall, double around) {
    return inside[point] * (t - wall) - steady[point] * (t - around);
  }

  /** Slope of that excess by the temperature of the air within the stage, W/K. */
  double excessSlope(int point) {
    return inside[point] * (1 - slope(point)) - steady[point];
  }

  /** How fast the wall warms, K/s. */
  double rate(int point, double t, double wall, double around) {
    double gains = inside[point] * (t - wall) - outside[point] * (wall - around);
    return gains / capacity[point];
  }

  /** Share of an error that a stage leaves over. */
  double leaves(int point, double newInverse) {
    double stores = capacity[point] * newInverse;
    return stores / (stores + inside[point] + outside[point]);
  }
}
