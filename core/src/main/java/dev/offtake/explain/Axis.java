package dev.offtake.explain;

import dev.offtake.quantity.Unit;
import dev.offtake.study.Sweep;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Prints values along a sweep, with about four figures over its length.
 *
 * @param unit in which they are printed
 * @param length of the sweep, SI
 */
public record Axis(Unit unit, double length) {
  private static final int FIGURES = 3;

  /** The axis of a sweep. */
  public static Axis of(Sweep sweep) {
    return new Axis(sweep.unit(), sweep.length());
  }

  /** The number alone. */
  public String number(double si) {
    return rounded(unit.fromSi(si), decimals());
  }

  /** The number alone, without decimals that say nothing. */
  public String shortest(double si) {
    BigDecimal value =
        new BigDecimal(rounded(unit.fromSi(si), decimals() + 1)).stripTrailingZeros();
    return (value.scale() < 0 ? value.setScale(0) : value).toPlainString();
  }

  /** Number and unit. */
  public String print(double si) {
    return unit.symbol().isEmpty() ? number(si) : number(si) + " " + unit.symbol();
  }

  /** The whole sweep: {@code 55 to 100 %}. */
  public String range(Sweep sweep) {
    String end = shortest(sweep.to());
    String to = unit.symbol().isEmpty() ? end : end + " " + unit.symbol();
    return shortest(sweep.from()) + " to " + to;
  }

  private int decimals() {
    double shown = Math.abs(length / unit.factor());
    return (int) Math.max(0, FIGURES - Math.ceil(Math.log10(shown)));
  }

  private static String rounded(double value, int decimals) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? rounded.abs().toPlainString() : rounded.toPlainString();
  }
}
