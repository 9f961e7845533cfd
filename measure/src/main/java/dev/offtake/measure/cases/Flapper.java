package dev.offtake.measure.cases;

/** The check valve of the mid stage. */
final class Flapper {
  private static final double CRITICAL = 0.45;

  /** Heat between which a seat that warps lifts, K. */
  private static final double WARPS_FROM = Shop.kelvin(250);

  private static final double WARPS_TO = Shop.kelvin(500);

  private final double area;
  private final double leak;
  private final double hotLeak;
  private final double held;
  private final double floor;
  private final double ceiling;
  private final double crack;
  private final double span;
  private final boolean backwards;

  Flapper(Knobs knobs, String name) {
    area = knobs.get(name, Knob.AREA);
    leak = knobs.get(name, Knob.LEAK);
    hotLeak = knobs.get(name, Knob.HOT_LEAK);
    held = knobs.get(name, Knob.HELD);
    floor = knobs.get(name, Knob.FLOOR);
    ceiling = knobs.get(name, Knob.CEILING);
    crack = knobs.get(name, Knob.CRACK);
    span = knobs.get(name, Knob.SPAN);
    backwards = knobs.on(name, Knob.BACKWARDS);
  }

  /** Flow from the first to the second side, kg/s; pressures Pa, temperatures K. */
  double flow(double p1, double t1, double p2, double t2) {
    double ahead = backwards ? p2 - p1 : p1 - p2;
    double open = leak + hotLeak * Gas.step(Math.max(t1, t2), WARPS_FROM, WARPS_TO);
    return Gas.flow(open + area * opening(ahead), CRITICAL, p1, t1, p2, t2);
  }

  /** A hinge with a spring: the further open, the less a psi moves it. */
  private double opening(double ahead) {
    if (!Double.isNaN(held)) {
      return held;
    }
    double free = ahead > crack ? 1 - Math.exp(-3 * (ahead - crack) / span) : 0;
    return Math.min(ceiling, Math.max(floor, free));
  }
}
