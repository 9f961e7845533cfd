package dev.offtake.explain;

import dev.offtake.solve.Solution;
import java.util.Locale;

/** How well a state balances, in words. */
final class BalanceWords {
  /** Pressure errors below this are told as below it, Pa. */
  private static final double LEAST = 0.001;

  /** No share is told smaller than the last place of a number. */
  private static final double LAST_PLACE = 1e-16;

  private BalanceWords() {}

  /**
   * {@code air and heat in = out to 2 parts in 10^12}, and where rounding rules what that is worth
   * in pressure.
   */
  static String of(Solution.Outcome outcome) {
    double share = Math.max(outcome.imbalance(), LAST_PLACE);
    int power = (int) Math.ceil(-Math.log10(share));
    long parts = (long) Math.ceil(share * Math.pow(10, power));
    if (parts == 10) {
      parts = 1;
      power--;
    }
    String says =
        "air and heat in = out to " + parts + (parts == 1 ? " part" : " parts") + " in 10^" + power;
    return outcome.pressureError() > 0 ? says + pressure(outcome.pressureError()) : says;
  }

  private static String pressure(double pa) {
    String size = pa < LEAST ? "under 0.001" : String.format(Locale.ROOT, "%.3f", pa);
    return " at the stillest point (rounding: a pressure error of " + size + " Pa)";
  }
}
