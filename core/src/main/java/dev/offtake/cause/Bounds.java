package dev.offtake.cause;

import dev.offtake.air.Day;
import dev.offtake.part.Gauge;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.Stated;
import dev.offtake.quantity.Style;
import java.util.Optional;

/** Refuses what no gauge can show. */
final class Bounds {
  /** No compressor gives more, Pa (870 psi): common practice, no source. */
  private static final double HIGHEST_PRESSURE = 6e6;

  /** No bleed air is hotter, K (1700 °F): common practice, no source. */
  private static final double HOTTEST = 1200;

  /** Share of a scale by which a reading at its end may be rounded over it. */
  private static final double ROUNDING = 1e-9;

  private Bounds() {}

  /**
   * Checks a reading.
   *
   * @param about where it was taken
   * @param stated the reading
   * @param day air outside
   * @param with test gauge; empty for the system's own
   * @throws QuantityProblem when it cannot be
   */
  static void check(About.Scaled about, Stated stated, Day day, Optional<UsedGauge> with)
      throws QuantityProblem {
    nature(about, stated, day);
    if (with.isPresent()) {
      Stated scale = with.get().scale().orElse(null);
      if (scale != null && scale.dimension() == stated.dimension()) {
        ends(with.get().name(), new Gauge.Scale(scale.low(), scale.high()), stated);
      }
    } else if (about instanceof About.Needle needle) {
      ends(needle.gauge().name(), needle.gauge().scale(), stated);
    }
  }

  private static void nature(About.Scaled about, Stated stated, Day day) throws QuantityProblem {
    boolean outside = !(about instanceof About.Needle needle) || ambient(needle.gauge());
    boolean gauge = stated.dimension() == Dimension.GAUGE_PRESSURE;
    if (gauge && outside && stated.low() < -day.pressure()) {
      String air = Style.SHOP.print(day.pressure(), Dimension.ABSOLUTE_PRESSURE);
      throw new QuantityProblem(
          "'" + stated.text() + "' reaches below vacuum: the air outside is only " + air,
          "check its sign and its unit, and the day");
    }
    double most = about.temperature() ? HOTTEST : HIGHEST_PRESSURE;
    if (stated.high() > most) {
      throw new QuantityProblem(
          "'" + stated.text() + "' is more than bleed air ever has",
          "check the number and its unit");
    }
  }

  private static boolean ambient(Gauge gauge) {
    return gauge.relative().isEmpty() || gauge.relative().equals("ambient");
  }

  private static void ends(String name, Gauge.Scale scale, Stated stated) throws QuantityProblem {
    double slack = ROUNDING * Math.max(1, Math.abs(scale.high()));
    boolean above = stated.high() > scale.high() + slack;
    if (above || stated.low() < scale.low() - slack) {
      double end = above ? scale.high() : scale.low();
      String where = Style.SHOP.print(end, stated.dimension());
      throw new QuantityProblem(
          "'" + stated.text() + "' is beyond the needle: the " + name + " ends at " + where,
          "write `pegged " + (above ? "high" : "low") + "` when it stands at its end");
    }
  }
}
