package dev.offtake.system;

import dev.offtake.part.Key;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Stated;

/** Refuses numbers that no bleed-air system has: most are a unit that slipped. Common practice, no source. */
final class Magnitudes {
  private static final double PSI = 6894.757293168361;

  private Magnitudes() {}

  static void check(Key key, Stated stated, Item at, Problems problems) {
    double size = Math.max(Math.abs(stated.low()), Math.abs(stated.high()));
    String name = key.name();
    if (name.equals("bore") && size > 0.3048) {
      tell(problems, at, name, stated, "larger than 12 in", "Did you mean mm?");
    } else if (name.equals("bore") && size < 0.001) {
      tell(problems, at, name, stated, "smaller than 0.04 in", "Did you mean in?");
    } else if (stated.dimension() == Dimension.TEMPERATURE && size > 1200) {
      tell(problems, at, name, stated, "above 1700 degF", "Check the unit");
    } else if (pressure(stated.dimension()) && size > 1000 * PSI) {
      tell(problems, at, name, stated, "above 1000 psi", "Check the unit");
    } else if (stated.dimension() == Dimension.MASS_FLOW && size > 50) {
      tell(problems, at, name, stated, "above 6600 lb/min", "Did you mean lb/h?");
    }
  }

  private static boolean pressure(Dimension dimension) {
    return dimension == Dimension.GAUGE_PRESSURE
        || dimension == Dimension.ABSOLUTE_PRESSURE
        || dimension == Dimension.PRESSURE_DIFFERENCE;
  }

  private static void tell(
      Problems problems, Item at, String key, Stated stated, String size, String mend) {
    problems.add(at, "`" + key + "` of " + stated.text() + " is " + size, mend);
  }
}
