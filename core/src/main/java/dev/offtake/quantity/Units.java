package dev.offtake.quantity;

import static dev.offtake.quantity.Dimension.ABSOLUTE_PRESSURE;
import static dev.offtake.quantity.Dimension.GAUGE_PRESSURE;
import static dev.offtake.quantity.Dimension.PRESSURE_DIFFERENCE;
import static dev.offtake.quantity.Dimension.TEMPERATURE;
import static dev.offtake.quantity.Dimension.TEMPERATURE_DIFFERENCE;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The table of units that Offtake reads.
 *
 * <p>Exact by definition: inch 25.4 mm, pound 0.45359237 kg, standard gravity 9.80665 m/s² (NIST SP
 * 811, 2008, appendix B). Conventional: inch of mercury at 13 595.1 kg/m³ and inch of water at 1000
 * kg/m³ (same source). Kv = 0.865 Cv (IEC 60534-1).
 */
public final class Units {
  /** Metres in an inch, exact. */
  static final double INCH = 0.0254;

  /** Kilograms in a pound, exact. */
  static final double POUND = 0.45359237;

  /** Standard gravity, m/s², exact. */
  static final double GRAVITY = 9.80665;

  /** Pascals in a pound-force per square inch, 6894.757… */
  static final double PSI = POUND * GRAVITY / (INCH * INCH);

  /** Kelvin of 0 °C. */
  private static final double ICE = 273.15;

  private static final double FAHRENHEIT = 5.0 / 9.0;
  private static final double LITRE = 1e-3;

  private static final List<Unit> ALL = Collections.unmodifiableList(table());
  private static final Map<Dimension, Map<String, Unit>> BY_SPELLING = index();

  private Units() {}

  /** All units; the usual one of each dimension first. */
  public static List<Unit> all() {
    return ALL;
  }

  /**
   * The units of one dimension, the usual one first.
   *
   * @param dimension what they measure; {@link Dimension#PRESSURE} gives gauge, then absolute units
   */
  public static List<Unit> of(Dimension dimension) {
    return ALL.stream().filter(unit -> belongs(unit.dimension(), dimension)).toList();
  }

  /**
   * Finds a unit by any of its spellings. Spaces, dots, hyphens and case do not count: {@code
   * PSIG}, {@code bar g} and {@code kg·m²} are all understood.
   *
   * @param spelling as written
   * @param dimension what is expected; {@link Dimension#PRESSURE} finds gauge and absolute units
   * @return the unit, or nothing when the dimension has no such unit
   */
  public static Optional<Unit> find(String spelling, Dimension dimension) {
    if (dimension == Dimension.PRESSURE) {
      return findPressure(spelling);
    }
    Map<String, Unit> units = BY_SPELLING.getOrDefault(dimension, Map.of());
    return Optional.ofNullable(units.get(key(spelling)));
  }

  /** Finds a unit of any dimension, in the order in which {@link Dimension} lists them. */
  static Optional<Unit> findAny(String spelling) {
    // A plain psi or inHg is first of all a difference, whatever a barometer makes of it.
    Optional<Unit> found = find(spelling, PRESSURE_DIFFERENCE);
    for (Dimension dimension : Dimension.values()) {
      if (found.isEmpty()) {
        found = find(spelling, dimension);
      }
    }
    return found;
  }

  /** A plain inHg is absolute only where nothing but an absolute pressure is meant. */
  private static Optional<Unit> findPressure(String spelling) {
    if (find(spelling, PRESSURE_DIFFERENCE).isPresent()) {
      return Optional.empty();
    }
    return find(spelling, GAUGE_PRESSURE).or(() -> find(spelling, ABSOLUTE_PRESSURE));
  }

  private static boolean belongs(Dimension own, Dimension asked) {
    return own == asked
        || asked == Dimension.PRESSURE && (own == GAUGE_PRESSURE || own == ABSOLUTE_PRESSURE);
  }

  /** The spelling without what papers disagree about. */
  static String key(String spelling) {
    StringBuilder key = new StringBuilder(spelling.length());
    for (char c : spelling.toLowerCase(Locale.ROOT).toCharArray()) {
      switch (c) {
        case '°' -> key.append("deg");
        case '²' -> key.append('2');
        case '³' -> key.append('3');
        case '·', '⋅', '*', '^', '-', '.', ' ', '\t', '\u00a0', '\u202f' -> {}
        default -> key.append(c);
      }
    }
    return key.toString();
  }

  private static Map<Dimension, Map<String, Unit>> index() {
    Map<Dimension, Map<String, Unit>> index = new EnumMap<>(Dimension.class);
    for (Unit unit : ALL) {
      Map<String, Unit> units = index.computeIfAbsent(unit.dimension(), d -> new HashMap<>());
      enter(units, unit.symbol(), unit);
      unit.spellings().forEach(spelling -> enter(units, spelling, unit));
    }
    return index;
  }

  private static void enter(Map<String, Unit> units, String spelling, Unit unit) {
    Unit other = units.put(key(spelling), unit);
    if (other != null && !other.equals(unit)) {
      throw new IllegalStateException(spelling + " is two units of " + unit.dimension().words());
    }
  }

  private static List<Unit> table() {
    List<Unit> table = new ArrayList<>();
    pressures(table);
    temperatures(table);
    flows(table);
    sizes(table);
    machine(table);
    return table;
  }

  private static void pressures(List<Unit> table) {
    pressure(table, "psi", PSI, false);
    pressure(table, "bar", 1e5, false);
    pressure(table, "kPa", 1e3, false);
    pressure(table, "Pa", 1, false);
    pressure(table, "inHg", 13_595.1 * GRAVITY * INCH, true);
    pressure(table, "inH2O", 1000 * GRAVITY * INCH, false);
    pressure(table, "hPa", 100, true);
    pressure(table, "mbar", 100, true);
  }

  /**
   * Enters a pressure unit three times: gauge, absolute, difference.
   *
   * @param barometer whether the plain unit is what barometers are read in, hence may stand for an
   *     absolute pressure where one is expected
   */
  private static void pressure(List<Unit> table, String base, double factor, boolean barometer) {
    String gap = base.equals("psi") ? "" : " ";
    List<String> gauge = List.of(base + "(g)", base + " gauge", base + " gage");
    List<String> absolute =
        new ArrayList<>(List.of(base + "(a)", base + " abs", base + " absolute"));
    if (barometer) {
      absolute.add(base);
    }
    List<String> difference = List.of(base + "d", base + "(d)", base + " diff");
    table.add(new Unit(base + gap + "g", gauge, GAUGE_PRESSURE, factor, 0));
    table.add(new Unit(base + gap + "a", absolute, ABSOLUTE_PRESSURE, factor, 0));
    table.add(new Unit(base, difference, PRESSURE_DIFFERENCE, factor, 0));
  }

  private static void temperatures(List<Unit> table) {
    temperature(table, "°F", FAHRENHEIT, ICE - 32 * FAHRENHEIT, "F", "Fahrenheit");
    temperature(table, "°C", 1, ICE, "C", "Celsius");
    temperature(table, "K", 1, 0, "kelvin");
    temperature(table, "degR", FAHRENHEIT, 0, "R", "Rankine");
  }

  private static void temperature(
      List<Unit> table, String symbol, double factor, double offset, String... spellings) {
    List<String> words = List.of(spellings);
    table.add(new Unit(symbol, words, TEMPERATURE, factor, offset));
    table.add(new Unit(symbol, words, TEMPERATURE_DIFFERENCE, factor, 0));
  }

  private static void flows(List<Unit> table) {
    Dimension flow = Dimension.MASS_FLOW;
    add(table, flow, POUND / 60, "lb/min", "lbm/min", "lbs/min", "pounds/min");
    add(table, flow, 1, "kg/s", "kg/sec");
    add(table, flow, POUND, "lb/s", "lbm/s", "lb/sec", "lbs/s");
    add(table, flow, POUND / 3600, "lb/h", "lbm/h", "lb/hr", "lbs/h");
    add(table, flow, 1e-3, "g/s", "g/sec");
    add(table, flow, 1.0 / 60, "kg/min");
    add(table, flow, 1.0 / 3600, "kg/h", "kg/hr");
    add(table, Dimension.VALVE_CAPACITY, 1, "Kv");
    add(table, Dimension.VALVE_CAPACITY, 0.865, "Cv");
    add(table, Dimension.SONIC_CONDUCTANCE, LITRE / 1e5, "L/(s bar)", "L/s/bar");
    add(table, Dimension.SONIC_CONDUCTANCE, 1, "m3/(s Pa)", "m3/s/Pa");
  }

  private static void sizes(List<Unit> table) {
    double foot = 12 * INCH;
    add(table, Dimension.LENGTH, INCH, "in", "inch", "inches", "\"");
    add(table, Dimension.LENGTH, 1e-3, "mm");
    add(table, Dimension.LENGTH, 1e-2, "cm");
    add(table, Dimension.LENGTH, foot, "ft", "foot", "feet");
    add(table, Dimension.LENGTH, 1, "m");
    add(table, Dimension.AREA, INCH * INCH, "in²", "sq in");
    add(table, Dimension.AREA, 1e-6, "mm²");
    add(table, Dimension.AREA, 1e-4, "cm²");
    add(table, Dimension.AREA, 1, "m²");
    add(table, Dimension.AREA, foot * foot, "ft²", "sq ft");
    add(table, Dimension.VOLUME, INCH * INCH * INCH, "in³", "cu in");
    add(table, Dimension.VOLUME, foot * foot * foot, "ft³", "cu ft");
    add(table, Dimension.VOLUME, LITRE, "L", "litre", "litres", "liter", "liters");
    add(table, Dimension.VOLUME, 1, "m³");
  }

  private static void machine(List<Unit> table) {
    add(table, Dimension.SHARE, 0.01, "%", "percent", "% core", "% fan", "% open");
    add(table, Dimension.SPEED, 1.0 / 60, "rpm", "rev/min");
    add(table, Dimension.SPEED, 1, "rev/s");
    add(table, Dimension.TIME, 1, "s", "sec", "second", "seconds");
    add(table, Dimension.TIME, 1e-3, "ms");
    add(table, Dimension.TIME, 60, "min", "minute", "minutes");
    add(table, Dimension.TIME, 3600, "h", "hr", "hour", "hours");
    add(table, Dimension.CONDUCTANCE, 1, "W/K", "W/degC");
    add(table, Dimension.TORQUE, POUND * GRAVITY * 12 * INCH, "lbf ft", "lb ft", "ft lbf", "ft lb");
    add(table, Dimension.TORQUE, 1, "Nm");
    add(table, Dimension.INERTIA, 1, "kg m²");
    add(table, Dimension.ANGLE, Math.PI / 180, "deg", "degree", "degrees");
    add(table, Dimension.ANGLE, 1, "rad");
    add(table, Dimension.NUMBER, 1, "");
  }

  private static void add(
      List<Unit> table, Dimension dimension, double factor, String symbol, String... spellings) {
    table.add(new Unit(symbol, List.of(spellings), dimension, factor, 0));
  }
}
