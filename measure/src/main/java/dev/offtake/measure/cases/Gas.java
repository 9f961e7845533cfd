package dev.offtake.measure.cases;

/**
 * Air of one heat capacity, and flow through an opening by a conductance and a critical ratio (the
 * form of ISO 6358 with index ½, from memory of the standard).
 *
 * <p>Offtake's own laws use heat that depends on temperature and another form; that is on purpose.
 */
final class Gas {
  /** Gas constant, J/(kg K). */
  static final double R = 287.0;

  /** Ratio of heats, one value for warm and hot air. */
  static final double GAMMA = 1.39;

  /** Heat at constant pressure, J/(kg K). */
  static final double CP = GAMMA * R / (GAMMA - 1);

  /** Flow of a choked ideal opening: ṁ √(R T) / (A p), from the textbook formula. */
  static final double CHOKED =
      Math.sqrt(GAMMA) * Math.pow(2 / (GAMMA + 1), (GAMMA + 1) / (2 * (GAMMA - 1)));

  /** Rounds the square root at zero flow; worth 0.02 psi. */
  private static final double ROUNDING = 3e-3;

  private Gas() {}

  /**
   * Flow through an opening, kg/s, positive from the first to the second side.
   *
   * @param area that passes the same choked flow without loss, m²
   * @param critical ratio of pressures below which it is choked
   * @param p1 pressure on the first side, Pa
   * @param t1 temperature there, K
   * @param p2 pressure on the second side, Pa
   * @param t2 temperature there, K
   */
  static double flow(double area, double critical, double p1, double t1, double p2, double t2) {
    if (area <= 0) {
      return 0;
    }
    return p1 >= p2
        ? oneWay(area, critical, p1, t1, p2 / p1)
        : -oneWay(area, critical, p2, t2, p1 / p2);
  }

  private static double oneWay(double area, double critical, double p, double t, double ratio) {
    double share = 1;
    if (ratio > critical) {
      double x = (ratio - critical) / (1 - critical);
      double rest = 1 - x * x;
      share = rest / Math.sqrt(rest + ROUNDING);
    }
    return area * p / Math.sqrt(R * t) * CHOKED * share;
  }

  /** From 0 to 1 between two values, with level ends. */
  static double step(double x, double from, double to) {
    double s = Math.min(1, Math.max(0, (x - from) / (to - from)));
    return s * s * (3 - 2 * s);
  }

  /** From 0 to 1 in proportion, with rounded corners. */
  static double ramp(double x, double from, double to) {
    double s = (x - from) / (to - from);
    double corner = 0.002;
    return 0.5 * (1 + Math.sqrt(s * s + corner) - Math.sqrt((s - 1) * (s - 1) + corner));
  }
}
