package dev.offtake.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.hipparchus.analysis.differentiation.Gradient;
import org.hipparchus.special.Gamma;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CrossFlowTest {
  private final CrossFlow core = new CrossFlow();

  /** The series as the books print it, by the library's incomplete gamma function. */
  private static double series(double c1, double c2, double ua) {
    double sum = 0;
    for (int m = 1; m < 2000; m++) {
      double term = reach(m, ua / c1) * reach(m, ua / c2);
      sum += term;
      if (term < 1e-18 * sum) {
        break;
      }
    }
    return c1 * c2 / ua * sum;
  }

  private static double reach(int m, double x) {
    return Gamma.regularizedGammaP(m, x, 1e-16, 100_000);
  }

  /** The same with automatic differentiation; for few transfer units only. */
  private static Gradient gradient(double rate1, double rate2, double surface) {
    Gradient c1 = Gradient.variable(3, 0, rate1);
    Gradient c2 = Gradient.variable(3, 1, rate2);
    Gradient ua = Gradient.variable(3, 2, surface);
    Gradient a = ua.divide(c1);
    Gradient b = ua.divide(c2);
    Gradient termA = a.negate().exp();
    Gradient termB = b.negate().exp();
    Gradient reachA = termA.negate().add(1);
    Gradient reachB = termB.negate().add(1);
    Gradient sum = reachA.multiply(reachB);
    for (int m = 1; m < 120; m++) {
      termA = termA.multiply(a).divide(m);
      termB = termB.multiply(b).divide(m);
      reachA = reachA.subtract(termA);
      reachB = reachB.subtract(termB);
      sum = sum.add(reachA.multiply(reachB));
    }
    return c1.multiply(c2).divide(ua).multiply(sum);
  }

  @Property(tries = 300, seed = "5")
  void agreesWithTheIncompleteGammaFunctions(
      @ForAll @DoubleRange(min = -1.5, max = 2.5) double lnA,
      @ForAll @DoubleRange(min = -1.5, max = 2.5) double lnB) {
    double c1 = Math.pow(10, -lnA);
    double c2 = Math.pow(10, -lnB);
    core.evaluate(c1, c2, 1);
    double expected = series(c1, c2, 1);
    assertThat(core.conductance).isCloseTo(expected, within(1e-11 * expected));
  }

  @Property(tries = 300, seed = "6")
  void derivativesAgreeWithAutomaticDifferentiation(
      @ForAll @DoubleRange(min = 0.3, max = 20) double c1,
      @ForAll @DoubleRange(min = 0.3, max = 20) double c2,
      @ForAll @DoubleRange(min = 0.1, max = 8) double ua) {
    core.evaluate(c1, c2, ua);
    Gradient expected = gradient(c1, c2, ua);
    assertThat(core.conductance).isCloseTo(expected.getValue(), within(1e-11 * c1));
    assertThat(core.dC1).isCloseTo(expected.getPartialDerivative(0), within(1e-10));
    assertThat(core.dC2).isCloseTo(expected.getPartialDerivative(1), within(1e-10));
    assertThat(core.dUa).isCloseTo(expected.getPartialDerivative(2), within(1e-10));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.01, 1, 40, 700, 5000, 1e5, 1e7})
  void hasNoKinkAtEqualRates(double ntu) {
    core.evaluate(1, 1, ntu);
    double middle = core.conductance;
    double slope1 = core.dC1;
    double slope2 = core.dC2;
    // Above the limit of NTU, UA follows the larger side and the slopes part by a hair.
    assertThat(slope1).isCloseTo(slope2, within(1e-3));
    double step = 1e-7;
    core.evaluate(1, 1 + step, ntu);
    assertThat(core.conductance - middle).isCloseTo(slope2 * step, within(1e-3 * step + 1e-13));
    core.evaluate(1, 1 - step, ntu);
    assertThat(core.conductance - middle).isCloseTo(-slope2 * step, within(1e-3 * step + 1e-13));
  }

  /**
   * For equal rates and NTU → ∞, 1 − ε → 1/√(π·NTU) (mean of the smaller of two equal Poissons).
   */
  @ParameterizedTest
  @ValueSource(doubles = {1e3, 1e4, 1e5})
  void tendsToItsAsymptoteAtEqualRates(double ntu) {
    core.evaluate(1, 1, ntu);
    double missing = 1 / Math.sqrt(Math.PI * ntu);
    assertThat(1 - core.conductance).isCloseTo(missing, within(missing / ntu));
  }

  @Property(tries = 500, seed = "7")
  void staysBelowTheSmallerRateAndTheSurface(
      @ForAll @DoubleRange(min = -9, max = 4) double ln1,
      @ForAll @DoubleRange(min = -9, max = 4) double ln2,
      @ForAll @DoubleRange(min = -9, max = 4) double lnUa) {
    double c1 = Math.pow(10, ln1);
    double c2 = Math.pow(10, ln2);
    double ua = Math.pow(10, lnUa);
    core.evaluate(c1, c2, ua);
    double bound = Math.min(ua, Math.min(c1, c2));
    assertThat(core.conductance).isPositive().isLessThanOrEqualTo(bound * (1 + 1e-12));
    assertThat(core.dC1).isBetween(0.0, 1 + 1e-12);
    assertThat(core.dC2).isBetween(0.0, 1 + 1e-12);
    assertThat(core.dUa).isBetween(0.0, 1 + 1e-12);
    double sum = core.dC1 * c1 + core.dC2 * c2 + core.dUa * ua;
    assertThat(sum).isCloseTo(core.conductance, within(1e-12 * bound));
    CrossFlow swapped = new CrossFlow();
    swapped.evaluate(c2, c1, ua);
    assertThat(swapped.conductance).isEqualTo(core.conductance);
  }

  @Test
  void isSafeAtNothing() {
    core.evaluate(0, 0, 5);
    assertThat(new double[] {core.conductance, core.dC1, core.dC2, core.dUa}).containsOnly(0);
    core.evaluate(0, 3, 5);
    assertThat(new double[] {core.conductance, core.dC1, core.dC2, core.dUa})
        .containsExactly(0, 1, 0, 0);
    core.evaluate(3, 0, 5);
    assertThat(new double[] {core.conductance, core.dC1, core.dC2, core.dUa})
        .containsExactly(0, 0, 1, 0);
    core.evaluate(3, 2, 0);
    assertThat(new double[] {core.conductance, core.dC1, core.dC2, core.dUa})
        .containsExactly(new double[] {0, 0, 0, 1}, within(1e-29));
    core.evaluate(3, 2, 1e-12);
    assertThat(core.conductance).isCloseTo(1e-12, within(1e-23));
  }
}
