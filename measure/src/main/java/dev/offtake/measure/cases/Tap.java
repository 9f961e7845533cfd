package dev.offtake.measure.cases;

/** A stage of the engine with its port: pressure and temperature by corrected speed. */
final class Tap {
  /** A port with a rounded inlet chokes early and recovers much. */
  private static final double CRITICAL = 0.55;

  /** Core speed below which a handling bleed that hangs open robs the stages, share. */
  private static final double HANDLING_BELOW = 0.85;

  private final Curve pressure;
  private final Curve heat;
  private final double rise;
  private final double bend;
  private final double handling;
  private final double area;
  final double hole;

  private Tap(Curve pressure, Curve heat, Knobs knobs, String name, double handling) {
    this.pressure = pressure;
    this.heat = heat;
    rise = knobs.get(name, Knob.RISE);
    bend = knobs.get(name, Knob.BEND);
    this.handling = handling;
    area = knobs.get(name, Knob.AREA);
    hole = knobs.get(name, Knob.HOLE);
  }

  /**
   * The mid, high or fan tap of a side.
   *
   * @param side which
   * @param part its name without the side
   * @param table rows of speed %, psig and °F, taken on a standard day
   */
  static Tap of(Knobs knobs, Side side, String part, double[][] table) {
    int n = table.length;
    double[] speed = new double[n];
    double[] ratio = new double[n];
    double[] heat = new double[n];
    for (int i = 0; i < n; i++) {
      speed[i] = table[i][0] / 100;
      ratio[i] = Math.log((table[i][1] * Shop.PSI + Shop.STANDARD_P) / Shop.STANDARD_P);
      heat[i] = Math.log(Shop.kelvin(table[i][2]) / Shop.STANDARD_T);
    }
    boolean core = !part.equals(Parts.FAN_TAP);
    double handling = core ? knobs.get(side.of(Parts.ENGINE), Knob.HANDLING) : 0;
    return new Tap(new Curve(speed, ratio), new Curve(speed, heat), knobs, side.of(part), handling);
  }

  /**
   * Pressure behind the stage, Pa.
   *
   * @param speed physical speed, share
   * @param outside the air
   */
  double p(double speed, Outside outside) {
    double n = corrected(speed, outside);
    double gain = rise * (1 + bend * pressure.between(n)) * (n < HANDLING_BELOW ? 1 - handling : 1);
    return outside.inletP() * (1 + (Math.exp(pressure.at(n)) - 1) * gain);
  }

  /** Temperature behind the stage, K; a stage that compresses less heats less. */
  double t(double speed, Outside outside) {
    double n = corrected(speed, outside);
    return outside.inletT() * (1 + (Math.exp(heat.at(n)) - 1) * (0.5 + 0.5 * rise));
  }

  private static double corrected(double speed, Outside outside) {
    return speed / Math.sqrt(outside.inletT() / Shop.STANDARD_T);
  }

  /** Flow out of the port, kg/s. */
  double flow(double stageP, double stageT, double p, double t) {
    return Gas.flow(area, CRITICAL, stageP, stageT, p, t);
  }

  /** Area of the port, m². */
  double area() {
    return area;
  }
}
