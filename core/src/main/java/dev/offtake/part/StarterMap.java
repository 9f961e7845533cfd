package dev.offtake.part;

/** Effective nozzle area and torque of a starter over core speed, straight between points and held outside. */
final class StarterMap {
  private final double[] speed;
  private final double[] torque;
  private final double[] area;
  private final double gauge;

  /**
   * Makes a map.
   *
   * @param speed core speeds, fractions, strictly rising
   * @param torque N m
   * @param area effective areas, m²
   * @param gauge inlet pressure at which the torque holds, Pa above ambient
   */
  StarterMap(double[] speed, double[] torque, double[] area, double gauge) {
    this.speed = speed.clone();
    this.torque = torque.clone();
    this.area = area.clone();
    this.gauge = gauge;
  }

  /** Effective area at a core speed, m². */
  double area(double core) {
    return at(area, core);
  }

  /** Torque at a core speed and an inlet pressure in Pa above ambient, N m. */
  double torque(double core, double above) {
    return at(torque, core) * Math.max(0, above) / gauge;
  }

  /** Torque of the map at a core speed, N m; 1 where it has none, to divide by. */
  double torqueOrOne(double core) {
    double value = at(torque, core);
    return value > 0 ? value : 1;
  }

  private double at(double[] y, double x) {
    int last = speed.length - 1;
    if (x <= speed[0]) {
      return y[0];
    }
    if (x >= speed[last]) {
      return y[last];
    }
    int i = 0;
    while (x > speed[i + 1]) {
      i++;
    }
    return y[i] + (y[i + 1] - y[i]) * (x - speed[i]) / (speed[i + 1] - speed[i]);
  }
}
