package dev.offtake.measure.cases;

import java.util.HashMap;
import java.util.Map;
import java.util.random.RandomGenerator;

/**
 * How one healthy plant differs from another, within the bands of demo/demo-twin.yaml where that
 * has them. A band is an acceptance: nothing lies outside it.
 */
final class Scatter {
  /** Of areas, users and tap curves, one sigma, share: common practice, no source. */
  private static final double AREAS = 0.03;

  private static final double FLOWS = 0.03;
  private static final double CURVES = 0.01;

  /** Largest bend of a tap's curve between its points, share; the file grants 5 %. */
  private static final double BEND = 0.05;

  /** Largest hole that nobody lists: joints and seals of one side's duct, m². */
  private static final double SEEPS = 0.04 * Shop.IN2;

  private final RandomGenerator chance;
  private final Knobs nominal;
  private final Map<Knobs.Key, Double> values = new HashMap<>();

  private Scatter(RandomGenerator chance) {
    this.chance = chance;
    nominal = Nominal.knobs();
  }

  /** Draws a healthy plant. */
  static Knobs draw(RandomGenerator chance) {
    Scatter scatter = new Scatter(chance);
    for (Side side : Side.values()) {
      scatter.engine(side);
      scatter.valves(side);
      scatter.cooling(side);
      scatter.users(side);
    }
    scatter.times(Parts.ISOLATION, Knob.AREA, AREAS);
    for (String supply : new String[] {Parts.AUXILIARY, Parts.GROUND}) {
      scatter.times(supply, Knob.GAIN, 0.01);
    }
    return scatter.nominal.with(scatter.values);
  }

  private void engine(Side side) {
    for (String tap : new String[] {Parts.MID_TAP, Parts.HIGH_TAP, Parts.FAN_TAP}) {
      String name = side.of(tap);
      times(name, Knob.RISE, CURVES);
      put(name, Knob.BEND, within(BEND));
      times(name, Knob.AREA, AREAS);
    }
  }

  private void valves(Side side) {
    String check = side.of(Parts.CHECK);
    times(check, Knob.AREA, AREAS);
    times(check, Knob.CRACK, 0.2);
    put(check, Knob.LEAK, chance.nextDouble() * 0.008 * Shop.IN2);
    String high = side.of(Parts.HIGH_STAGE);
    held(high, -3, 3);
    put(high, Knob.DROOP, Shop.PSI * (4 + 4 * chance.nextDouble()));
    times(high, Knob.AREA, AREAS);
    String regulator = side.of(Parts.REGULATOR);
    held(regulator, -2, 4);
    put(regulator, Knob.DROOP, Shop.PSI * (3 + 3 * chance.nextDouble()));
    times(regulator, Knob.AREA, AREAS);
    put(regulator, Knob.HOLE, SEEPS * chance.nextDouble());
    put(side.of(Parts.DUCT_PLUG), Knob.HOLE, SEEPS * chance.nextDouble());
  }

  /** A set pressure: normal with the ends of the band at two sigma, cut off there. */
  private void held(String name, double below, double above) {
    double middle = (below + above) / 2;
    double half = (above - below) / 2;
    double off = Math.max(-2, Math.min(2, chance.nextGaussian())) * half / 2;
    put(name, Knob.SET, nominal.get(name, Knob.SET) + Shop.PSI * (middle + off));
  }

  private void cooling(Side side) {
    String core = side.of(Parts.PRECOOLER);
    times(core, Knob.AREA, AREAS);
    put(core, Knob.CLEAN, 1 - 0.05 * chance.nextDouble());
    put(side.of(Parts.COOLING), Knob.DRIFT, within(5 * Shop.DEG_F));
    times(side.of(Parts.COOLING), Knob.AREA, AREAS);
    put(side.of(Parts.THERMOSTAT), Knob.DRIFT, within(5 * Shop.DEG_F));
    put(side.of(Parts.PYLON_JOINT), Knob.LOSS, zone());
    put(side.of(Parts.WING_JOINT), Knob.LOSS, zone());
  }

  private double zone() {
    return Knob.LOSS.usual() * Math.exp(0.4 * chance.nextGaussian());
  }

  private void users(Side side) {
    for (String user : new String[] {Parts.PACK, Parts.WING_HEAT, Parts.COWL_HEAT}) {
      times(side.of(user), Knob.TAKES, FLOWS);
    }
  }

  private void put(String part, Knob knob, double value) {
    values.put(new Knobs.Key(part, knob), value);
  }

  private void times(String part, Knob knob, double sigma) {
    double off = Math.max(-2.5, Math.min(2.5, chance.nextGaussian())) * sigma;
    put(part, knob, nominal.get(part, knob) * (1 + off));
  }

  private double within(double most) {
    return most * (2 * chance.nextDouble() - 1);
  }
}
