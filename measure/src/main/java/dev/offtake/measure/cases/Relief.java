package dev.offtake.measure.cases;

/** The relief valve on the regulated duct, as it opens from shut. */
final class Relief {
  private static final double CRITICAL = 0.45;

  /** From cracking to wide open, Pa. */
  private static final double SPAN = 10 * Shop.PSI;

  private final double area;
  private final double leak;
  private final double held;
  private final double ceiling;
  private final double set;
  private final double hole;

  Relief(Knobs knobs, String name) {
    area = knobs.get(name, Knob.AREA);
    leak = knobs.get(name, Knob.LEAK);
    held = knobs.get(name, Knob.HELD);
    ceiling = knobs.get(name, Knob.CEILING);
    set = knobs.get(name, Knob.SET);
    hole = knobs.get(name, Knob.HOLE) + knobs.get(name, Knob.HOLE_UP);
  }

  /** Flow to the outside, kg/s. */
  double flow(double p, double t, double outside) {
    double free = Gas.step(p - outside, set, set + SPAN);
    double open = Double.isNaN(held) ? Math.min(ceiling, free) : held;
    return Gas.flow(leak + area * open + hole, CRITICAL, p, t, outside, t);
  }
}
