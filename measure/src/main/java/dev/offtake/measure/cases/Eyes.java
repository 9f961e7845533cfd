package dev.offtake.measure.cases;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.random.RandomGenerator;

/** How a person reads one set of gauges: constant errors of this day's gauges, and slips. */
final class Eyes {
  /** Constant part and part of each reading of the duct gauge, from the file, Pa. */
  static final double CONSTANT = 0.8 * Shop.PSI;

  static final double EACH = 0.3 * Shop.PSI;

  /** The gauge at the test port is good to 1 psi, three quarters of it constant. */
  static final double PORT_CONSTANT = 0.75 * Shop.PSI;

  static final double PORT_EACH = 0.25 * Shop.PSI;

  /** The same of the thermometer, K. */
  static final double HOT_CONSTANT = 8 * Shop.DEG_F;

  static final double HOT_EACH = 4 * Shop.DEG_F;

  /** A needle read one or two figures off; a light or a position told wrong; a crew that errs. */
  static final double MISREAD = 0.02;

  static final double WRONG = 0.015;
  static final double CREW_ERRS = 0.15;

  /** Half of the band that a crew calls normal, Pa: twice the gauge, three psi at least. */
  static final double NORMAL = 3 * Shop.PSI;

  /** The same of a temperature, K (30 °F). */
  static final double HOT_NORMAL = 30 * Shop.DEG_F;

  private final RandomGenerator chance;
  private final Biases biases;

  /**
   * Constant errors of one day's gauges, by side, Pa and K.
   *
   * @param needles of the duct gauge
   * @param ports of the gauges at the test ports
   * @param thermometers in the ducts
   */
  public record Biases(
      Map<Side, Double> needles, Map<Side, Double> ports, Map<Side, Double> thermometers) {
    /** Keeps its maps. */
    public Biases {
      needles = Map.copyOf(needles);
      ports = Map.copyOf(ports);
      thermometers = Map.copyOf(thermometers);
    }

    /** Those of a day. */
    static Biases draw(RandomGenerator chance) {
      Map<Side, Double> needles = new EnumMap<>(Side.class);
      Map<Side, Double> ports = new EnumMap<>(Side.class);
      Map<Side, Double> thermometers = new EnumMap<>(Side.class);
      for (Side side : Side.values()) {
        needles.put(side, within(CONSTANT, chance));
        ports.put(side, within(PORT_CONSTANT, chance));
        thermometers.put(side, within(HOT_CONSTANT, chance));
      }
      return new Biases(needles, ports, thermometers);
    }
  }

  Eyes(RandomGenerator chance) {
    this(Biases.draw(chance), chance);
  }

  Eyes(Biases biases, RandomGenerator chance) {
    this.biases = biases;
    this.chance = chance;
  }

  /** The gauges of this day. */
  Biases biases() {
    return biases;
  }

  private static double within(double most, RandomGenerator chance) {
    return most * (2 * chance.nextDouble() - 1);
  }

  /** The value of a line of a readings file. */
  String read(Item item, double shown) {
    return switch (item.kind()) {
      case DUCT -> number(item, shown + of(biases.needles, item) + within(EACH, chance));
      case TEMPERATURE ->
          number(item, shown + of(biases.thermometers, item) + within(HOT_EACH, chance));
      case INTERSTAGE -> number(item, shown + of(biases.ports, item) + within(PORT_EACH, chance));
      case TRIP_LIGHT, LEAK_LIGHT -> (shown > 0.5) != slips(WRONG) ? "on" : "off";
      case POSITION -> position(slips(WRONG) ? 1 - Math.round(shown) : shown);
    };
  }

  private static double of(Map<Side, Double> own, Item item) {
    return own.getOrDefault(item.side(), 0.0);
  }

  /** What a crew says of a needle: against what it is used to. */
  String say(Item item, double shown, double used) {
    Map<Side, Double> own = item.hot() ? biases.thermometers : biases.needles;
    double normal = item.hot() ? HOT_NORMAL : NORMAL;
    double off = shown + of(own, item) - used;
    int word = off > normal ? 1 : off < -normal ? -1 : 0;
    if (slips(CREW_ERRS)) {
      word = word == 0 ? (chance.nextBoolean() ? 1 : -1) : 0;
    }
    return word == 0 ? "normal" : word > 0 ? "high" : "low";
  }

  private boolean slips(double share) {
    return chance.nextDouble() < share;
  }

  private String number(Item item, double shown) {
    double slip = 0;
    if (slips(MISREAD)) {
      slip = (chance.nextBoolean() ? 5 : 10) * (chance.nextBoolean() ? 1 : -1) * item.mark();
    }
    double read = shown + slip;
    if (item.hot()) {
      return degrees(item, read);
    }
    long psi = Math.round(Panel.onScale(item, read) / Shop.PSI);
    if (item.kind() == Item.Kind.DUCT && read > Panel.TOP) {
      return "pegged high";
    }
    return item.kind() == Item.Kind.DUCT && psi == 0 && read < 0
        ? "pegged low"
        : String.format(Locale.ROOT, "%d psig", psi);
  }

  private static String degrees(Item item, double read) {
    if (read < Panel.COLDEST || read > Panel.HOTTEST) {
      return read < Panel.COLDEST ? "pegged low" : "pegged high";
    }
    double above = Panel.onScale(item, read) - Panel.COLDEST;
    return String.format(Locale.ROOT, "%d degF", 10 * Math.round(above / item.mark()));
  }

  static String position(double shown) {
    return shown > 0.75 ? "open" : shown < 0.25 ? "shut" : "part open";
  }
}
