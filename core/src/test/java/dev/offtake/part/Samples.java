package dev.offtake.part;

import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Stated;
import java.util.List;

/** Invented parts for tests. */
final class Samples {
  static final double PSI = 6894.757293168361;
  static final double LB_MIN = 0.45359237 / 60;

  private Samples() {}

  static KindFacts tapFacts() {
    return new KindFacts()
        .with("to", "duct")
        .si("bore", 0.0762, Dimension.LENGTH)
        .si("flow coefficient", 0.8, Dimension.NUMBER)
        .si("pressure factor", 1, Dimension.NUMBER)
        .with("speeds", "physical")
        .with("read", "at port")
        .with("with", "no bleed")
        .with(
            "table",
            List.of(
                new double[] {0.62, 101325 + 8.1 * PSI, 360},
                new double[] {0.80, 101325 + 40 * PSI, 470},
                new double[] {0.99, 101325 + 103 * PSI, 594}));
  }

  static KindFacts drooping() {
    return tapFacts()
        .si("droop", 0.8, Dimension.NUMBER)
        .with(
            "core flow",
            new Facts.At(Stated.of(25, Dimension.MASS_FLOW), Stated.of(0.99, Dimension.SHARE)));
  }

  static KindFacts supply() {
    return new KindFacts()
        .with("to", "duct")
        .si("temperature", 480, Dimension.TEMPERATURE)
        .si("check valve cracks at", 0.3 * PSI, Dimension.PRESSURE_DIFFERENCE)
        .with(
            "table",
            List.of(
                new double[] {45 * PSI, 0},
                new double[] {38 * PSI, 120 * LB_MIN},
                new double[] {25 * PSI, 200 * LB_MIN}));
  }

  static KindFacts duct() {
    return new KindFacts()
        .with("path", new Facts.Path("up", "down", false))
        .si("bore", 0.1, Dimension.LENGTH)
        .si("length", 3, Dimension.LENGTH)
        .si("roughness", 5e-5, Dimension.LENGTH)
        .si("k", 0.5, Dimension.NUMBER)
        .si("insulation thickness", 0.01, Dimension.LENGTH)
        .si("insulation conductivity", 0.06, Dimension.NUMBER)
        .si("emissivity", 0.3, Dimension.NUMBER);
  }

  static KindFacts user() {
    return new KindFacts()
        .with("takes from", "duct")
        .with("takes", List.of(new Facts.When(Stated.of(52 * LB_MIN, Dimension.MASS_FLOW), null)))
        .si("needs", 12 * PSI, Dimension.GAUGE_PRESSURE)
        .si("needs at temperature", 450, Dimension.TEMPERATURE);
  }

  static KindFacts exchanger() {
    return new KindFacts()
        .with("hot path", new Facts.Path("hot in", "hot out", false))
        .with("cold path", new Facts.Path("cold in", "cold out", false))
        .si("rated hot flow", 0.7, Dimension.MASS_FLOW)
        .si("rated hot inlet", 650, Dimension.TEMPERATURE)
        .si("rated hot outlet", 480, Dimension.TEMPERATURE)
        .si("rated cold flow", 1.0, Dimension.MASS_FLOW)
        .si("rated cold inlet", 320, Dimension.TEMPERATURE)
        .si("exponent", 0.6, Dimension.NUMBER)
        .si("hot pressure drop", 2 * PSI, Dimension.PRESSURE_DIFFERENCE)
        .si("rated hot pressure", 40 * PSI, Dimension.GAUGE_PRESSURE)
        .si("cold pressure drop", 0.8 * PSI, Dimension.PRESSURE_DIFFERENCE)
        .si("rated cold pressure", 4 * PSI, Dimension.GAUGE_PRESSURE);
  }
}
