package dev.offtake.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.offtake.heat.CrossFlow;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Effectiveness of the cross-flow core, both streams unmixed. */
class CrossFlowCheckTest {

  private static double effectiveness(double ratio, double ntu) {
    CrossFlow core = new CrossFlow();
    core.evaluate(1, ratio, ntu * Math.min(1, ratio));
    return core.conductance / Math.min(1, ratio);
  }

  /**
   * Recomputed by two independent series, the incomplete gamma functions and the Bessel functions,
   * which agree to 1e-12; eight decimals. A ratio of 0 is taken as 1e-12. Kays and London's printed
   * table (Compact Heat Exchangers) is these values rounded (from memory).
   */
  @ParameterizedTest
  @CsvSource({
    "0, 0.25, 0.22119922",
    "0, 0.5, 0.39346934",
    "0, 1, 0.63212056",
    "0, 1.5, 0.77686984",
    "0, 2, 0.86466472",
    "0, 3, 0.95021293",
    "0, 4, 0.98168436",
    "0, 5, 0.99326205",
    "0.25, 0.25, 0.21522426",
    "0.25, 0.5, 0.37509443",
    "0.25, 1, 0.58801133",
    "0.25, 1.5, 0.71615376",
    "0.25, 2, 0.79742231",
    "0.25, 3, 0.88845748",
    "0.25, 4, 0.93401982",
    "0.25, 5, 0.95907428",
    "0.5, 0.25, 0.20946231",
    "0.5, 0.5, 0.35782705",
    "0.5, 1, 0.54748983",
    "0.5, 1.5, 0.65973206",
    "0.5, 2, 0.73240925",
    "0.5, 3, 0.81970828",
    "0.5, 4, 0.86968663",
    "0.5, 5, 0.90166775",
    "0.75, 0.25, 0.20390491",
    "0.75, 0.5, 0.34159477",
    "0.75, 1, 0.51030865",
    "0.75, 1.5, 0.60774986",
    "0.75, 2, 0.67108029",
    "0.75, 3, 0.74940640",
    "0.75, 4, 0.79688361",
    "0.75, 5, 0.82925122",
    "1, 0.25, 0.19854393",
    "1, 0.5, 0.32632998",
    "1, 1, 0.47622239",
    "1, 1.5, 0.56017293",
    "1, 2, 0.61424724",
    "1, 3, 0.68129111",
    "1, 4, 0.72242572",
    "1, 5, 0.75090398"
  })
  void agreesWithTheExactSeries(double ratio, double ntu, double epsilon) {
    double other = 1 / Math.max(ratio, 1e-12);
    assertThat(effectiveness(other, ntu)).isCloseTo(epsilon, within(6e-9));
    // The law knows no first and second side.
    CrossFlow core = new CrossFlow();
    core.evaluate(other, 1, ntu);
    assertThat(core.conductance).isCloseTo(epsilon, within(6e-9));
  }

  /** Recomputed by the gamma-function series; the Bessel form overflows at the second. */
  @ParameterizedTest
  @CsvSource({"0.9, 40, 0.94912628", "0.9, 400, 0.99749804"})
  void holdsAtManyTransferUnits(double ratio, double ntu, double epsilon) {
    assertThat(effectiveness(1 / ratio, ntu)).isCloseTo(epsilon, within(6e-9));
  }

  /** Public correlation library CalebBell/ht, docstring and tests: NTU 5, ratio 0.7. */
  @Test
  void agreesWithACorrelationLibrary() {
    assertThat(effectiveness(1 / 0.7, 5)).isCloseTo(0.8444821799748551, within(1e-12));
  }

  /**
   * Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, example 11.3 (gas over a finned
   * tube with water; notebook Chapter_11 of FOSSEE/Python-Textbook-Companions): ratio 0.45 and NTU
   * 2.1 read from a chart as 0.75, good to 2.5 %.
   */
  @Test
  void agreesWithATextbookChart() {
    assertThat(effectiveness(1 / 0.45, 2.1)).isCloseTo(0.75, withinPercentage(2.5));
  }

  /** Recomputed for the same example: effectiveness 0.754717 takes NTU 2.08084. */
  @Test
  void agreesWithTheRecomputedExample() {
    assertThat(effectiveness(1 / 0.45, 2.08084)).isCloseTo(0.754717, within(1e-5));
  }
}
