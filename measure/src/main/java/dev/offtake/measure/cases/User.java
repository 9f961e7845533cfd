package dev.offtake.measure.cases;

/** A user of air with a flow limiter: its schedule, or what it can pass wide open. */
final class User {
  private static final double CRITICAL = 0.2;

  /** A soft corner between the two. */
  private static final double CORNER = 8;

  private final double schedule;
  private final double area;
  private final double held;
  private final double doubles;
  final double hole;

  /**
   * Makes a user.
   *
   * @param needs pressure at which it just gets its schedule, above the air outside, Pa
   */
  User(Knobs knobs, String name, double needs) {
    schedule = knobs.get(name, Knob.TAKES);
    area = knobs.get(name, Knob.AREA) * schedule / reference(needs);
    held = knobs.get(name, Knob.HELD);
    doubles = knobs.get(name, Knob.DOUBLES);
    hole = knobs.get(name, Knob.HOLE);
  }

  /** Flow of a square metre at what it needs, at 350 °F on a standard day, kg/(s m²). */
  private static double reference(double needs) {
    double t = Shop.kelvin(350);
    return Gas.flow(1, CRITICAL, needs + Shop.STANDARD_P, t, Shop.STANDARD_P, t);
  }

  /** Flow, kg/s; pressures Pa, temperatures K. */
  double flow(boolean on, double p, double t, double outside) {
    boolean takes = Double.isNaN(held) ? on : held > 0.5;
    if (!takes || p <= outside || schedule <= 0) {
      return 0;
    }
    double factor =
        Double.isNaN(doubles) ? 1 : 1 + Gas.step(p - outside, doubles, doubles + 4 * Shop.PSI);
    double wide = Gas.flow(area * factor, CRITICAL, p, t, outside, t);
    if (wide <= 0) {
      return 0;
    }
    double wants = schedule * factor;
    return wide / Math.pow(1 + Math.pow(wide / wants, CORNER), 1 / CORNER);
  }
}
