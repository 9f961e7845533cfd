package dev.offtake.measure.cases;

import java.util.HashMap;
import java.util.Map;

/**
 * The healthy demo as it was built: numbers typed from demo/demo-twin.yaml where that has them, and
 * what no paper tells (how much of a bore passes air, losses of bends and tees) by experience with
 * such parts, no source.
 */
final class Nominal {
  /** Rows of core %, psig and °F; SD p.4. */
  static final double[][] MID = {{62, 8.1, 188}, {80, 38, 360}, {99, 103, 610}};

  /** Rows of core %, psig and °F; SD p.4. */
  static final double[][] HIGH = {{62, 26, 322}, {80, 98, 590}, {99, 285, 950}};

  /** Rows of fan %, psig and °F; SD p.4. */
  static final double[][] FAN = {{24, 0.4, 62}, {96, 9.5, 130}};

  /** Rows of psig and lb/min. */
  static final double[][] AUXILIARY = {{44, 0}, {38, 100}, {28, 180}};

  /** Rows of psig and lb/min. */
  static final double[][] GROUND = {{50, 0}, {42, 100}, {30, 160}};

  static final double AUXILIARY_HEAT = 400;
  static final double GROUND_HEAT = 350;

  /** Share of a bore that passes choked flow: a rounded port, a butterfly, a flapper, a hole. */
  private static final double PORT = 0.82;

  private static final double BUTTERFLY = 0.76;
  private static final double FLAP = 0.80;

  /** A seat that is tight by its manual, m². */
  private static final double TIGHT = 0.002 * Shop.IN2;

  /** What joints and seals that nobody lists let out before and behind the cooler, m². */
  private static final double SEEP = 0.02 * Shop.IN2;

  private static final double PRECOOLER_COLD = 0.0076;

  private final Map<Knobs.Key, Double> values = new HashMap<>();

  private Nominal() {}

  /** All of them. */
  static Knobs knobs() {
    Nominal nominal = new Nominal();
    for (Side side : Side.values()) {
      nominal.engine(side);
      nominal.valves(side);
      nominal.users(side);
    }
    nominal.put(Parts.ISOLATION, Knob.AREA, BUTTERFLY * Shop.bore(3.5));
    nominal.put(Parts.ISOLATION, Knob.LEAK, TIGHT);
    return new Knobs(nominal.values);
  }

  private void put(String part, Knob knob, double value) {
    values.put(new Knobs.Key(part, knob), value);
  }

  private void engine(Side side) {
    put(side.of(Parts.MID_TAP), Knob.AREA, PORT * Shop.bore(3.4));
    put(side.of(Parts.HIGH_TAP), Knob.AREA, PORT * Shop.bore(2.4));
    put(side.of(Parts.FAN_TAP), Knob.AREA, PORT * Shop.bore(5));
  }

  private void valves(Side side) {
    String check = side.of(Parts.CHECK);
    put(check, Knob.AREA, FLAP * Shop.bore(3.5));
    put(check, Knob.CRACK, 0.3 * Shop.PSI);
    put(check, Knob.SPAN, 0.5 * Shop.PSI);
    put(check, Knob.LEAK, 2 * TIGHT);
    regulator(side.of(Parts.HIGH_STAGE), side.pick(32, 30), 6, 2.5);
    regulator(side.of(Parts.REGULATOR), 42, 4.5, 4);
    put(side.of(Parts.REGULATOR), Knob.HOLE, SEEP);
    put(side.of(Parts.DUCT_PLUG), Knob.HOLE, SEEP);
    put(side.of(Parts.PRECOOLER), Knob.AREA, 1);
    put(side.of(Parts.PRECOOLER), Knob.COLD_AREA, PRECOOLER_COLD);
    put(side.of(Parts.COOLING), Knob.AREA, BUTTERFLY * Shop.bore(5));
    put(side.of(Parts.COOLING), Knob.LEAK, TIGHT);
    put(side.of(Parts.RELIEF), Knob.AREA, FLAP * Shop.bore(1));
    put(side.of(Parts.RELIEF), Knob.LEAK, TIGHT / 4);
    put(side.of(Parts.RELIEF), Knob.SET, 70 * Shop.PSI);
  }

  private void regulator(String name, double psig, double droop, double bore) {
    put(name, Knob.AREA, BUTTERFLY * Shop.bore(bore));
    put(name, Knob.LEAK, TIGHT);
    put(name, Knob.SET, psig * Shop.PSI);
    put(name, Knob.DROOP, droop * Shop.PSI);
    put(name, Knob.STICTION, 0.5 * Shop.PSI);
  }

  private void users(Side side) {
    user(side.of(Parts.PACK), 52);
    user(side.of(Parts.WING_HEAT), 38);
    user(side.of(Parts.COWL_HEAT), 9);
    user(side.of(Parts.STARTER), 90);
  }

  private void user(String name, double poundsPerMinute) {
    put(name, Knob.TAKES, poundsPerMinute * Shop.LB_MIN);
    put(name, Knob.AREA, 1);
  }
}
