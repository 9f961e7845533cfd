package dev.offtake.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;

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
    BigDecimal rounded =
        BigDecimal.valueOf(find(format.unit(), dimension).fromSi(si))
            .setScale(format.decimals(), RoundingMode.HALF_UP);
    if (!format.trimmed()) {
      return rounded.toPlainString();
    }
    BigDecimal shortest = rounded.stripTrailingZeros();
    return (shortest.scale() < 0 ? shortest.setScale(0) : shortest).toPlainString();
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
    Unit unit = find(format.unit(), dimension);
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
    return find(format(dimension).unit(), dimension).symbol();
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

  private record Format(String unit, int decimals, boolean trimmed) {}

  private Format format(Dimension dimension) {
    return this == SHOP ? shop(dimension) : metric(dimension);
  }

  private static Format shop(Dimension dimension) {
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

  private static Format metric(Dimension dimension) {
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

  private static Format common(Dimension dimension) {
    return switch (dimension) {
      case SHARE -> trimmed("%", 1);
      case SPEED -> trimmed("rpm", 0);
      case TIME -> trimmed("s", 2);
      case CONDUCTANCE -> trimmed("W/K", 2);
      case SONIC_CONDUCTANCE -> trimmed("L/(s bar)", 2);
      case INERTIA -> trimmed("kg m²", 4);
      case ANGLE -> trimmed("deg", 1);
      case NUMBER -> trimmed("", 3);
      default ->
          throw new IllegalArgumentException(
              "a " + dimension.words() + " has no one unit: ask the value which it is");
    };
  }

  private static Format fixed(String unit, int decimals) {
    return new Format(unit, decimals, false);
  }

  private static Format trimmed(String unit, int decimals) {
    return new Format(unit, decimals, true);
  }

  private static Unit find(String spelling, Dimension dimension) {
    return Units.find(spelling, dimension).orElseThrow();
  }
}
