package dev.offtake.measure.cases;

/**
 * The precooler with its cooling air: effectiveness of a cross-flow core by the closed formula of
 * the heat transfer textbooks (Incropera and DeWitt, equation 11.32, from memory), two films in
 * series whose conductances follow the flows.
 */
final class Cooler {
  private static final double CRITICAL = 0.5;

  /** Rated flows kg/s and drop Pa; SD p.9 and the usual drop of such a core. */
  private static final double HOT = 80 * Shop.LB_MIN;

  private static final double COLD = 120 * Shop.LB_MIN;
  private static final double DROP = 2.2 * Shop.PSI;
  private static final double RATED_DENSITY =
      (40 * Shop.PSI + Shop.STANDARD_P) / (Gas.R * Shop.kelvin(505));

  /** Cooling of the hot air at the rated point over the difference of the inlets. */
  private static final double RATED = (610.0 - 400) / (610 - 130);

  /** Turbulent film in tubes and over fins; textbook exponents. */
  private static final double HOT_FILM = 0.75;

  private static final double COLD_FILM = 0.6;

  /** The hot film carries the larger conductance. */
  private static final double HOT_SHARE = 1.3;

  /** Friction grows a little slower than the square of the flow. */
  private static final double DROP_POWER = 1.85;

  private static final double LITTLE = 1e-5;

  private final double conductance;
  private final double hotArea;
  private final double collapses;
  private final double collapsed;
  private final double tapArea;
  private final double coreArea;
  private final double hole;
  private final Knobs knobs;
  private final String valve;

  Cooler(Knobs knobs, Side side, double tapArea) {
    this.knobs = knobs;
    String name = side.of(Parts.PRECOOLER);
    valve = side.of(Parts.COOLING);
    conductance = rated() * knobs.get(name, Knob.CLEAN);
    hotArea = knobs.get(name, Knob.AREA);
    coreArea = knobs.get(name, Knob.COLD_AREA);
    collapses = knobs.get(name, Knob.COLLAPSES);
    collapsed = knobs.get(name, Knob.COLLAPSED);
    hole =
        knobs.get(valve, Knob.HOLE)
            + knobs.get(valve, Knob.HOLE_UP)
            + knobs.get(side.of(Parts.FAN_TAP), Knob.HOLE);
    this.tapArea = tapArea;
  }

  /** Conductance at the rated point that cools as the plate says, W/K. */
  private static double rated() {
    double low = 0;
    double high = 20;
    while (high - low > 1e-9) {
      double middle = (low + high) / 2;
      if (effectiveness(middle, HOT / COLD) < RATED) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low * HOT * Gas.CP;
  }

  private static double effectiveness(double ntu, double ratio) {
    double inner = Math.exp(-ratio * Math.pow(ntu, 0.78)) - 1;
    return 1 - Math.exp(Math.pow(ntu, 0.22) / ratio * inner);
  }

  /** Flow through the hot side, kg/s, from its friction; pressures Pa, temperatures K. */
  double hotFlow(double p1, double t1, double p2, double t2) {
    double difference = p1 - p2;
    double t = difference > 0 ? t1 : t2;
    double x = difference / DROP * ((p1 + p2) / 2 / (Gas.R * t)) / RATED_DENSITY;
    double free = x / Math.pow(x * x + 1e-4, 0.5 - 0.5 / DROP_POWER);
    double area = hotArea;
    if (!Double.isNaN(collapses)) {
      area *= 1 - (1 - collapsed) * Gas.step(difference, 0.6 * collapses, collapses);
    }
    return HOT * area * free;
  }

  /**
   * Cooling flow, kg/s.
   *
   * @param ductT what the valve feels, K
   */
  double coldFlow(double fanP, double fanT, double ductT, double outsideP) {
    double valveArea = knobs.get(valve, Knob.LEAK) + knobs.get(valve, Knob.AREA) * opening(ductT);
    double series =
        1
            / Math.sqrt(
                1 / (tapArea * tapArea) + 1 / (valveArea * valveArea) + 1 / (coreArea * coreArea));
    // A hole before the core blows off what it takes of the valve's air.
    double reaches = series / (series + hole);
    return reaches * Gas.flow(series, CRITICAL, fanP, fanT, outsideP, fanT);
  }

  private double opening(double ductT) {
    double held = knobs.get(valve, Knob.HELD);
    if (!Double.isNaN(held)) {
      return held;
    }
    double feels = ductT + knobs.get(valve, Knob.DRIFT);
    double free = Gas.ramp(feels, Shop.kelvin(390), Shop.kelvin(440));
    return Math.min(knobs.get(valve, Knob.CEILING), Math.max(knobs.get(valve, Knob.FLOOR), free));
  }

  /** Temperature of the hot air behind the core, K. */
  double outlet(double hotFlow, double hotT, double coldFlow, double coldT) {
    double hot = Math.max(LITTLE, Math.abs(hotFlow));
    double cold = Math.max(LITTLE, coldFlow);
    double films =
        1 / (HOT_SHARE * Math.pow(hot / HOT, HOT_FILM)) + 1 / Math.pow(cold / COLD, COLD_FILM);
    double ua = conductance * (1 / HOT_SHARE + 1) / films;
    double least = Math.min(hot, cold);
    double most = Math.max(hot, cold);
    double ratio = Math.max(1e-6, least / most);
    double share = effectiveness(ua / (least * Gas.CP), ratio);
    return hotT - share * least / hot * (hotT - coldT);
  }
}
