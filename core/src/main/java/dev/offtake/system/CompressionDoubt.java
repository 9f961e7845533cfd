package dev.offtake.system;

import dev.offtake.air.Air;
import dev.offtake.part.Conditions;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Stated;
import dev.offtake.quantity.Style;
import java.util.List;

/**
 * Asks whether gauge and absolute are mixed up in a row of a tap's table, or its decimal point has
 * slipped, by the temperature that stands beside the pressure.
 *
 * <p>Compression from the inlet to the stage has the polytropic efficiency η = (γ − 1)/γ · ln(p/p₀)
 * / ln(T/T₀) with the γ of the mean temperature (textbook matter: Dixon and Hall, Fluid Mechanics
 * and Thermodynamics of Turbomachinery, chapter 1). Over 1 is colder than compression without loss;
 * under 0.45 is hotter than any compressor that still gives bleed air (common practice, no source).
 * A row is asked about only when the other reading of the pressure would fit. Of a slipped point
 * only what lies further out is asked: a manifold loses pressure that a table may not tell of.
 */
final class CompressionDoubt {

  private static final double LEAST = 0.45;

  /** Over 1, as a table's temperatures are rounded. */
  private static final double MOST = 1.05;

  /** Under this no manifold's loss explains it (common practice, no source). */
  private static final double SLIPPED = 0.3;

  /** A smaller rise of temperature is too coarse to tell by, K (20 °F). */
  private static final double RISE = 20 / 1.8;

  private CompressionDoubt() {}

  static void ask(List<Stated> row, Conditions day, Item at, Problems doubts) {
    if (row.size() != 3 || row.get(2).dimension() != Dimension.TEMPERATURE) {
      return;
    }
    Stated pressure = row.get(1);
    Stated temperature = row.get(2);
    boolean gauge = pressure.dimension() == Dimension.GAUGE_PRESSURE;
    if (!gauge && pressure.dimension() != Dimension.ABSOLUTE_PRESSURE) {
      return;
    }
    double p = pressure.nominal();
    double asGauge = efficiency(p + day.ambientP(), temperature.nominal(), day);
    double asAbsolute = efficiency(p, temperature.nominal(), day);
    String said = pressure.text() + " at " + Style.SHOP.print(temperature);
    if (gauge && asGauge > MOST && fits(asAbsolute)) {
      String wrong = said + " is colder than compression without any loss";
      doubts.add(at, wrong, "As absolute pressure it would fit: is it psia, not psig?");
    } else if (!gauge && asAbsolute < LEAST && fits(asGauge)) {
      String wrong = said + " is hotter than a compressor would make it";
      doubts.add(at, wrong, "As gauge pressure it would fit: is it psig, not psia?");
    } else if (temperature.nominal() > day.inletT() + RISE) {
      slipped(pressure, temperature, day, at, doubts);
    }
  }

  private static void slipped(
      Stated pressure, Stated temperature, Conditions day, Item at, Problems doubts) {
    double outside = pressure.dimension() == Dimension.GAUGE_PRESSURE ? day.ambientP() : 0;
    double p = pressure.nominal();
    double t = temperature.nominal();
    double efficiency = efficiency(p + outside, t, day);
    String wrong = pressure.text() + " at " + Style.SHOP.print(temperature) + " is ";
    if (efficiency > MOST && fits(efficiency(p / 10 + outside, t, day))) {
      doubts.add(
          at,
          wrong + "colder than compression without any loss",
          "A tenth of the pressure would fit: has its decimal point slipped?");
    } else if (efficiency < SLIPPED && fits(efficiency(10 * p + outside, t, day))) {
      doubts.add(
          at,
          wrong + "hotter than a compressor would make it",
          "Ten times the pressure would fit: has its decimal point slipped?");
    }
  }

  private static boolean fits(double efficiency) {
    return efficiency >= LEAST && efficiency <= MOST;
  }

  /** Polytropic efficiency; NaN when the row is not above the inlet. */
  private static double efficiency(double p, double t, Conditions day) {
    if (!(p > 0) || !(t > day.inletT()) || t > 1500) {
      return Double.NaN;
    }
    double gamma = Air.gamma(0.5 * (t + day.inletT()));
    return (gamma - 1) / gamma * Math.log(p / day.inletP()) / Math.log(t / day.inletT());
  }
}
