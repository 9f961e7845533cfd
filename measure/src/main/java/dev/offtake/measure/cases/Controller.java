package dev.offtake.measure.cases;

/** A valve that holds a pressure: the high stage valve and the bleed regulator. */
final class Controller {
  private static final double CRITICAL = 0.35;

  /** A throttle gives little area for its first degrees. */
  private static final double CURVE = 1.25;

  /** Muscle that first moves it and that moves it all the way, above the air outside, Pa. */
  private static final double NO_MUSCLE = 8 * Shop.PSI;

  private static final double FULL_MUSCLE = 12.5 * Shop.PSI;

  /** Difference that it needs so as not to shut against reverse flow, Pa. */
  private static final double FORWARD = 0.4 * Shop.PSI;

  /** Half of the way from shut to wide open, in droops: flat at both ends, steep in the middle. */
  private static final double HALF_WAY = 0.65;

  private final Knobs knobs;
  private final String name;
  private final double area;
  private final double leak;
  private final double held;
  private final double ceiling;
  private final double set;
  private final double droop;
  private final double muscle;
  private final double stroke;
  private final double hangsBelow;
  private final boolean deaf;
  final boolean crossed;
  final boolean wrongBoss;

  Controller(Knobs knobs, String name) {
    this.knobs = knobs;
    this.name = name;
    area = knobs.get(name, Knob.AREA);
    leak = knobs.get(name, Knob.LEAK);
    held = knobs.get(name, Knob.HELD);
    ceiling = knobs.get(name, Knob.CEILING);
    set = knobs.get(name, Knob.SET);
    droop = knobs.get(name, Knob.DROOP);
    muscle = knobs.get(name, Knob.MUSCLE);
    stroke = knobs.get(name, Knob.STROKE);
    hangsBelow = knobs.get(name, Knob.HANGS_BELOW);
    deaf = knobs.on(name, Knob.DEAF);
    crossed = knobs.on(name, Knob.CROSSED);
    wrongBoss = knobs.on(name, Knob.WRONG_BOSS);
  }

  /** Half of the friction's band, Pa. */
  double stiction() {
    return knobs.get(name, Knob.STICTION);
  }

  /**
   * What the head feels above what it counts from, Pa.
   *
   * @param p where the line ends, Pa absolute
   * @param outside pressure of the air outside, Pa
   */
  double felt(double p, double outside) {
    double trapped = knobs.get(name, Knob.TRAPPED);
    double vent = knobs.get(name, Knob.VENT);
    double feels =
        Double.isNaN(trapped)
            ? outside + (p - outside) * knobs.get(name, Knob.GAIN) + knobs.get(name, Knob.OFFSET)
            : trapped;
    double reference = Double.isNaN(vent) ? outside + knobs.get(name, Knob.VENT_ABOVE) : vent;
    return feels - reference;
  }

  /** What moves it. */
  record Asked(double felt, double trim, boolean shut, double core, double outside) {}

  /** Flow, kg/s; pressures Pa absolute, temperatures K. */
  double flow(Asked asked, double p1, double t1, double p2, double t2) {
    double open = Math.pow(opening(asked, p1, p2), CURVE);
    return Gas.flow(leak + area * open, CRITICAL, p1, t1, p2, t2);
  }

  private double opening(Asked asked, double p1, double p2) {
    if (!Double.isNaN(held)) {
      return held;
    }
    if (asked.core < hangsBelow) {
      return 0.5;
    }
    if (asked.shut && !deaf) {
      return 0;
    }
    double error = set - asked.trim - asked.felt;
    double wants = Gas.step(error, -HALF_WAY * droop, HALF_WAY * droop);
    double strong = Gas.step(muscle * (p1 - asked.outside), NO_MUSCLE, FULL_MUSCLE);
    double forward = Gas.step(p1 - p2, 0, FORWARD);
    return Math.min(ceiling, wants * strong * stroke * forward);
  }
}
