package dev.offtake.study;

import dev.offtake.quantity.QuantityProblem;
import java.util.Locale;
import java.util.regex.Pattern;

/** Shares that somebody wrote without {@code %}. */
public final class BareShare {
  private static final Pattern NUMBER = Pattern.compile("\\d{1,3}(?:\\.\\d{1,6})?|\\.\\d{1,6}");

  private BareShare() {}

  /**
   * Refuses a number without a unit.
   *
   * @param text what was written where a share belongs
   * @throws QuantityProblem when it is a bare number; says how it is written: one below 1 is
   *     probably meant as a share, one above as percent
   */
  public static void check(String text) throws QuantityProblem {
    if (!NUMBER.matcher(text).matches()) {
      return;
    }
    double value = Double.parseDouble(text);
    String percent = value < 1 ? trimmed(String.format(Locale.ROOT, "%.4f", 100 * value)) : text;
    String say = value == 1 ? "1 % or 100 %" : percent + " %";
    throw new QuantityProblem(text + " has no unit", "say " + say);
  }

  private static String trimmed(String decimal) {
    return decimal.replaceFirst("\\.?0+$", "");
  }
}
