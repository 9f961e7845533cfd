package dev.offtake.measure.cases;

/** The auxiliary unit or the ground supply: a parabola through its three points. */
final class Source {
  private static final double CRACK = 0.3 * Shop.PSI;
  private static final double CRITICAL = 0.5;

  private final double top;
  private final double linear;
  private final double square;
  private final double temperature;
  private final double hose;
  private final double back;
  private final boolean dead;

  /**
   * Makes a supply.
   *
   * @param table rows of psig and lb/min, the first without flow
   * @param fahrenheit of its air
   */
  Source(Knobs knobs, String name, double[][] table, double fahrenheit) {
    double gain = knobs.get(name, Knob.GAIN);
    double w1 = table[1][1] * Shop.LB_MIN;
    double w2 = table[2][1] * Shop.LB_MIN;
    double d1 = (table[0][0] - table[1][0]) * Shop.PSI / w1;
    double d2 = (table[0][0] - table[2][0]) * Shop.PSI / w2;
    top = gain * table[0][0] * Shop.PSI;
    square = gain * (d2 - d1) / (w2 - w1);
    linear = gain * d1 - square * w1;
    temperature = Shop.kelvin(fahrenheit) + knobs.get(name, Knob.DRIFT);
    hose = knobs.get(name, Knob.HOLE_UP);
    back = knobs.get(name, Knob.HOLE);
    dead = knobs.on(name, Knob.DEAD);
  }

  /** Flow into the duct, kg/s, never negative. */
  double flow(boolean on, double p, double outside) {
    double needed = p + CRACK;
    double room = top + outside - needed;
    if (!on || dead || room <= 0) {
      return 0;
    }
    double all = (Math.sqrt(linear * linear + 4 * square * room) - linear) / (2 * square);
    double lost = Gas.flow(hose, CRITICAL, needed, temperature, outside, temperature);
    return Math.max(0, all - lost);
  }

  /** Flow back out of the duct while it gives nothing, kg/s. */
  double backFlow(double given, double p, double t, double outside) {
    return given > 0 ? 0 : Math.max(0, Gas.flow(back, CRITICAL, p, t, outside, t));
  }

  /** Temperature of its air, K. */
  double t() {
    return temperature;
  }
}
