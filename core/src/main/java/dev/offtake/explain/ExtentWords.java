package dev.offtake.explain;

import dev.offtake.cause.find.Ranked;
import dev.offtake.part.Extent;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Style;
import dev.offtake.quantity.Unit;
import dev.offtake.quantity.Units;
import dev.offtake.study.Fault;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Set;

/**
 * How far a failure has gone, with its range and no finer than it is known: {@code 21 % open (15 to
 * 26)}.
 */
final class ExtentWords {
  /** A range that leaves out less of what is possible tells nothing. */
  private static final double ALL = 0.8;

  /** A range shows so many steps of the last digit at least. */
  private static final double STEPS = 3;

  private static final Set<String> BROKEN_UNITS = Set.of("in", "in²", "bar", "bar g", "bar a");
  private static final int FINEST = 2;

  private final Style style;

  ExtentWords(Style style) {
    this.style = style;
  }

  /**
   * Words for one failure of a cause; empty for one without an extent.
   *
   * @param ranked the cause
   * @param number which of its failures
   */
  String of(Ranked ranked, int number) {
    Fault best = ranked.best().get(number);
    Extent extent = best.mode().extent();
    if (extent == null) {
      return "";
    }
    int place = place(ranked, number);
    double told = ranked.places().get(2)[place] - ranked.places().get(1)[place];
    if (told > ALL) {
      return "to an extent that cannot be told";
    }
    double low = Math.min(best.extent(), ranked.low().get(number).extent());
    double high = Math.max(best.extent(), ranked.high().get(number).extent());
    return words(extent, best.extent(), low, high);
  }

  /** Which of the free extents belongs to a failure; one cause of several has only one. */
  private static int place(Ranked ranked, int number) {
    int place = 0;
    for (int i = 0; i < number && !ranked.cause().common(); i++) {
      place += ranked.best().get(i).mode().extent() == null ? 0 : 1;
    }
    return place;
  }

  private String words(Extent extent, double best, double low, double high) {
    Unit unit = Units.find(style.unit(extent.dimension()), extent.dimension()).orElseThrow();
    int digits = digits(unit, best, high - low);
    String from = number(unit, low, digits);
    String to = number(unit, high, digits);
    String range = from.equals(to) ? "" : " (" + from + " to " + to + ")";
    return number(unit, best, digits) + what(extent, unit) + range;
  }

  private static String what(Extent extent, Unit unit) {
    String says = extent.says();
    return switch (extent.dimension()) {
      case SHARE -> " % " + (says.startsWith("share ") ? says.substring(6) : says);
      case NUMBER -> " " + says;
      default -> " " + unit.symbol();
    };
  }

  private static int digits(Unit unit, double best, double width) {
    if (!BROKEN_UNITS.contains(unit.symbol()) && unit.dimension() != Dimension.NUMBER) {
      return 0;
    }
    int digits = 0;
    while (digits < FINEST
        && (Math.pow(10, -digits) > width / unit.factor() / STEPS
            || Math.pow(10, -digits) > 2 * Math.abs(unit.fromSi(best)))) {
      digits++;
    }
    return digits;
  }

  private static String number(Unit unit, double si, int digits) {
    return BigDecimal.valueOf(unit.fromSi(si))
        .setScale(digits, RoundingMode.HALF_UP)
        .toPlainString();
  }
}
