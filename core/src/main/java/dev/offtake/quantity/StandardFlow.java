package dev.offtake.quantity;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Standard cubic feet per minute: a mass flow only on a stated reference day.
 *
 * <p>There is no one standard day: counted at 59 °F or at 70 °F the same scfm differ by 2 %. One
 * scfm is ρ·ft³/min with ρ = p/(R·T) of dry air.
 */
final class StandardFlow {
  /** Gas constant of dry air, J/(kg K): 8.31446261815324 / 28.9651159e-3 (NASA/TP-2002-211556). */
  private static final double R_AIR = 8.31446261815324 / 28.9651159e-3;

  private static final double FOOT = 12 * Units.INCH;

  private static final String SYMBOL = "scfm";

  private static final Pattern WITH_DAY =
      Pattern.compile("(.*\\bscfm\\b[^;]*?)\\s+at\\s+(.*)", Pattern.CASE_INSENSITIVE);

  private StandardFlow() {}

  /** A text and what it expects. */
  record Read(String value, Expected expected) {}

  /** Takes the reference day off the text, if it is a standard flow, and makes it a unit. */
  static Read read(String text, Dimension dimension) throws QuantityProblem {
    Matcher matcher = WITH_DAY.matcher(text);
    if (dimension != Dimension.MASS_FLOW || !matcher.matches()) {
      return new Read(text, new Expected(dimension, null));
    }
    return new Read(matcher.group(1), new Expected(dimension, unit(matcher.group(2))));
  }

  private static Unit unit(String day) throws QuantityProblem {
    Cursor cursor = new Cursor(day);
    Cursor.Amount first = cursor.amount();
    if (!cursor.accept(",")) {
      cursor.acceptWord("and");
    }
    Cursor.Amount second = cursor.amount();
    cursor.end();
    boolean pressureFirst = Units.find(second.unit(), Dimension.TEMPERATURE).isPresent();
    double kelvin = si(pressureFirst ? second : first, Dimension.TEMPERATURE);
    double pascal = si(pressureFirst ? first : second, Dimension.ABSOLUTE_PRESSURE);
    double density = pascal / (R_AIR * kelvin);
    double factor = density * FOOT * FOOT * FOOT / 60;
    return new Unit(SYMBOL, List.of(), Dimension.MASS_FLOW, factor, 0);
  }

  private static double si(Cursor.Amount amount, Dimension dimension) throws QuantityProblem {
    double si = new Expected(dimension, null).unit(amount).toSi(amount.number());
    if (si <= 0) {
      throw new QuantityProblem(
          amount.written() + " is no reference day",
          "write 59 degF 14.696 psia or what the paper says");
    }
    return si;
  }

  static QuantityProblem needsDay(String written, Dimension dimension) {
    if (dimension != Dimension.MASS_FLOW) {
      return new QuantityProblem(
          written + " is a mass flow, not a " + dimension.words(), "give a " + dimension.words());
    }
    return new QuantityProblem(
        written + " does not say at which temperature and pressure it is counted",
        "write the reference day, such as scfm at 59 degF 14.696 psia");
  }
}
