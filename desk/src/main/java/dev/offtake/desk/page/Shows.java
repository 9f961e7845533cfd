package dev.offtake.desk.page;

import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Style;

/**
 * Numbers as the page shows them: whole in the units of the shop, never finer than a gauge.
 *
 * @param style units
 */
record Shows(Style style) {
  private static final double PSI = 6894.757293168;
  private static final double LB_MIN = 0.45359237 / 60;

  /** Where a warmer step begins, K: 150, 300, 450, 600 and 800 °F (own choice). */
  private static final double[] WARMER = {338.706, 422.039, 505.372, 588.706, 699.817};

  /** A gauge pressure with its unit; whole psi, or tenths of a bar. */
  String pressure(double pa) {
    return style.read(pa, Dimension.GAUGE_PRESSURE, style == Style.SHOP ? PSI : 1e4);
  }

  /** A temperature with its unit, whole. */
  String temperature(double kelvin) {
    return style.print(kelvin, Dimension.TEMPERATURE);
  }

  /** A flow without its direction, with its unit; whole lb/min, or hundredths of a kg/s. */
  String flow(double kgPerSecond) {
    double step = style == Style.SHOP ? LB_MIN : 0.01;
    return style.read(Math.abs(kgPerSecond), Dimension.MASS_FLOW, step);
  }

  /** What stands before the unit. */
  static String number(String printed) {
    int blank = printed.indexOf(' ');
    return blank < 0 ? printed : printed.substring(0, blank);
  }

  /** Which of six steps a temperature falls into, from 1, the coolest. */
  static int step(double kelvin) {
    int step = 1;
    for (double warmer : WARMER) {
      step += kelvin >= warmer ? 1 : 0;
    }
    return step;
  }

  /** From where to where a step goes, in words. */
  String step(int step) {
    String from = step > 1 ? temperature(WARMER[step - 2]) : "";
    String to = step <= WARMER.length ? temperature(WARMER[step - 1]) : "";
    if (from.isEmpty()) {
      return "under " + to;
    }
    return to.isEmpty() ? from + " and over" : number(from) + " to " + to;
  }

  /** How many steps there are. */
  static int steps() {
    return WARMER.length + 1;
  }
}
