package dev.offtake.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.Function;

/**
 * Units in which answers are printed.
 *
 * <p>Numbers are rounded half up to what a shop gauge shows, with a point and without thousands
 * marks whatever the computer's language, and never as {@code -0.0}. What is not a number prints as
 * {@code unknown}.
 */
public enum Style {
  /** psig, °F, lb/min, in. */
  SHOP,
  /** bar, °C, kg/s, mm. */
  METRIC;

  private static final String NOT_A_NUMBER = "unknown";

  /** A unit that is none. */
  private static final String NONE = "none";

  private static final double[] TENS = {1, 10, 100, 1e3, 1e4};

  /** Larger numbers are not rounded by a quick way. */
  private static final double EXACT = 1e9;

  /** What is nearer to a half than this is rounded as it is written. */
  private static final double NEAR_HALF = 1e-5;

  private static final Map<Dimension, Format> SHOP_FORMATS = formats(Style::shop);
  private static final Map<Dimension, Format> METRIC_FORMATS = formats(Style::metric);

  private static Map<Dimension, Format> formats(Function<Dimension, Written> writes) {
    Map<Dimension, Format> formats = new EnumMap<>(Dimension.class);
    for (Dimension dimension : Dimension.values()) {
      Written written = writes.apply(dimension);
      if (!written.unit().equals(NONE)) {
        Unit unit = Units.find(written.unit(), dimension).orElseThrow();
        formats.put(dimension, new Format(unit, written.decimals(), written.trimmed()));
      }
    }
    return formats;
  }

  /**
   * The number alone, rounded for the shop, such as {@code 23.1}.
   *
   * @param si value in the SI unit of the dimension
   * @param dimension what it measures; never {@link Dimension#PRESSURE}, which a value decides
   */
  public String number(double si, Dimension dimension) {
    if (!Double.isFinite(si)) {
      return NOT_A_NUMBER;
    }
    Format format = format(dimension);
    BigDecimal rounded = rounded(format.unit().fromSi(si), format.decimals());
    if (!format.trimmed()) {
      return rounded.toPlainString();
    }
    BigDecimal shortest = rounded.stripTrailingZeros();
    return (shortest.scale() < 0 ? shortest.setScale(0) : shortest).toPlainString();
  }

  /**
   * Rounds half up as the number is written: 0.15 to 0.2, though no binary number is 0.15. Away
   * from halves that is the same as rounding the binary number, which takes a tenth of the time.
   */
  private static BigDecimal rounded(double value, int decimals) {
    double scaled = value * TENS[decimals];
    double down = Math.floor(scaled);
    boolean plain = Math.abs(scaled) < EXACT && Math.abs(scaled - down - 0.5) > NEAR_HALF;
    return plain
        ? BigDecimal.valueOf((long) (scaled - down < 0.5 ? down : down + 1), decimals)
        : BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
  }

  /**
   * Number and unit of what is read off a scale: no finer than its marks, {@code 23 psig} with
   * marks 1 psi apart.
   *
   * @param si value in the SI unit of the dimension
   * @param dimension what it measures; never {@link Dimension#PRESSURE}
   * @param step distance of the marks, SI; 0 for a scale that is read to any digit
   */
  public String read(double si, Dimension dimension, double step) {
    Format format = format(dimension);
    Unit unit = format.unit();
    BigDecimal marks =
        BigDecimal.valueOf(step / unit.factor())
            .setScale(format.decimals(), RoundingMode.HALF_UP)
            .stripTrailingZeros();
    if (marks.signum() == 0 || !Double.isFinite(si)) {
      return print(si, dimension);
    }
    BigDecimal number =
        BigDecimal.valueOf(unit.fromSi(si))
            .setScale(Math.max(0, marks.scale()), RoundingMode.HALF_UP);
    return number.toPlainString() + " " + unit.symbol();
  }

  /** The unit alone, such as {@code psig}; empty for a bare number. */
  public String unit(Dimension dimension) {
    return format(dimension).unit().symbol();
  }

  /** Number and unit, such as {@code 23.1 psig}. */
  public String print(double si, Dimension dimension) {
    String number = number(si, dimension);
    String unit = unit(dimension);
    return unit.isEmpty() || number.equals(NOT_A_NUMBER) ? number : number + " " + unit;
  }

  /** Prints a value with its range: {@code 42.0 psig}, {@code 25.0..35.0 psig}. */
  public String print(Stated stated) {
    Dimension dimension = stated.dimension();
    String low = number(stated.low(), dimension);
    String high = number(stated.high(), dimension);
    String range = low.equals(high) ? "" : low + "..";
    return range + print(range.isEmpty() ? stated.nominal() : stated.high(), dimension);
  }

  private record Format(Unit unit, int decimals, boolean trimmed) {}

  private Format format(Dimension dimension) {
    Format known = (this == SHOP ? SHOP_FORMATS : METRIC_FORMATS).get(dimension);
    if (known == null) {
      throw new IllegalArgumentException(
          "a " + dimension.words() + " has no one unit: ask the value which it is");
    }
    return known;
  }

  /** A format with its unit as it is written. */
  private record Written(String unit, int decimals, boolean trimmed) {}

  private static Written shop(Dimension dimension) {
    return switch (dimension) {
      case GAUGE_PRESSURE -> fixed("psig", 1);
      case ABSOLUTE_PRESSURE -> fixed("psia", 1);
      case PRESSURE_DIFFERENCE -> fixed("psi", 1);
      case TEMPERATURE, TEMPERATURE_DIFFERENCE -> fixed("°F", 0);
      case MASS_FLOW -> fixed("lb/min", 1);
      case LENGTH -> trimmed("in", 2);
      case AREA -> trimmed("in²", 2);
      case VOLUME -> trimmed("in³", 0);
      case TORQUE -> trimmed("lbf ft", 1);
      case VALVE_CAPACITY -> trimmed("Cv", 1);
      default -> common(dimension);
    };
  }

  private static Written metric(Dimension dimension) {
    return switch (dimension) {
      case GAUGE_PRESSURE -> fixed("bar g", 2);
      case ABSOLUTE_PRESSURE -> fixed("bar a", 2);
      case PRESSURE_DIFFERENCE -> fixed("bar", 2);
      case TEMPERATURE, TEMPERATURE_DIFFERENCE -> fixed("°C", 0);
      case MASS_FLOW -> fixed("kg/s", 3);
      case LENGTH -> trimmed("mm", 1);
      case AREA -> trimmed("mm²", 0);
      case VOLUME -> trimmed("L", 2);
      case TORQUE -> trimmed("Nm", 1);
      case VALVE_CAPACITY -> trimmed("Kv", 1);
      default -> common(dimension);
    };
  }

  private static Written common(Dimension dimension) {
    return switch (dimension) {
      case SHARE -> trimmed("%", 1);
      case SPEED -> trimmed("rpm", 0);
      case TIME -> trimmed("s", 2);
      case CONDUCTANCE -> trimmed("W/K", 2);
      case SONIC_CONDUCTANCE -> trimmed("L/(s bar)", 2);
      case INERTIA -> trimmed("kg m²", 4);
      case ANGLE -> trimmed("deg", 1);
      case NUMBER -> trimmed("", 3);
      default -> fixed(NONE, 0);
    };
  }

  private static Written fixed(String unit, int decimals) {
    return new Written(unit, decimals, false);
  }

  private static Written trimmed(String unit, int decimals) {
    return new Written(unit, decimals, true);
  }
}
