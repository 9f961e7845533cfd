package dev.offtake.measure.cases;

/** What gauges, lights and switches show of a state, with what is broken in them, without error. */
final class Panel {
  /** Top of the duct gauge's scale, Pa. */
  static final double TOP = 80 * Shop.PSI;

  /** Above its knee a worn needle creeps by this share. */
  private static final double CREEP = 0.3;

  /** Openings at which position switches close. */
  private static final double ALMOST = 0.03;

  /** Ends of the thermometer's scale, K (0 and 600 °F). */
  static final double COLDEST = 459.67 * Shop.DEG_F;

  static final double HOTTEST = 1059.67 * Shop.DEG_F;

  private Panel() {}

  /**
   * What is shown: a pressure in Pa above the air outside or a temperature in K, beyond the scale
   * as it falls; 1 for a light that is lit; 1, 0 or ½ for a valve that is open, shut or between.
   */
  static double shows(Item item, State state, Knobs knobs) {
    State.HalfState half = state.of(item.side());
    return switch (item.kind()) {
      case DUCT -> duct(item.side(), state, knobs);
      case TEMPERATURE -> temperature(item.side(), state, knobs);
      case INTERSTAGE -> gauge(item.side().of(Parts.PORT_GAUGE), half.interstage(), knobs);
      case TRIP_LIGHT -> half.tripLight() ? 1 : 0;
      case LEAK_LIGHT -> half.leakLight() ? 1 : 0;
      case POSITION -> position(state.isolation(), knobs.get(Parts.ISOLATION, Knob.TOLD));
    };
  }

  private static double duct(Side side, State state, Knobs knobs) {
    Side end = knobs.on(Parts.DUCT_GAUGE, Knob.CROSSED) ? side.other() : side;
    String needle = Parts.needle(side);
    State.HalfState half = state.of(end);
    double there = knobs.on(needle, Knob.WRONG_BOSS) ? half.interstage() : half.duct();
    return gauge(needle, there, knobs);
  }

  private static double temperature(Side side, State state, Knobs knobs) {
    Side end = knobs.on(Parts.THERMOMETER, Knob.CROSSED) ? side.other() : side;
    return gauge(Parts.thermometer(side), state.of(end).ductT(), knobs);
  }

  private static double gauge(String name, double there, Knobs knobs) {
    double stuck = knobs.get(name, Knob.TRAPPED);
    if (!Double.isNaN(stuck)) {
      return stuck;
    }
    double shown = there * knobs.get(name, Knob.GAIN) + knobs.get(name, Knob.OFFSET);
    double knee = knobs.get(name, Knob.KNEE);
    return shown > knee ? knee + CREEP * (shown - knee) : shown;
  }

  private static double position(double opening, double told) {
    if (!Double.isNaN(told)) {
      return told;
    }
    if (opening <= ALMOST) {
      return 0;
    }
    return opening >= 1 - ALMOST ? 1 : 0.5;
  }

  /** What is shown as far as the needle goes: the gauges of the flight deck end at both ends. */
  static double onScale(Item item, double shown) {
    if (item.hot()) {
      return Math.min(HOTTEST, Math.max(COLDEST, shown));
    }
    double top = item.kind() == Item.Kind.DUCT ? TOP : Double.POSITIVE_INFINITY;
    return Math.min(top, Math.max(0, shown));
  }
}
