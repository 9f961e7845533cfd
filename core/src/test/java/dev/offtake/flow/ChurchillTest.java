package dev.offtake.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class ChurchillTest {
  private static Churchill at(double lnRe, double e) {
    Churchill c = new Churchill();
    c.evaluate(lnRe, e);
    return c;
  }

  @Property(tries = 400, seed = "31")
  void firstAndSecondDerivativesAgreeWithDifferences(
      @ForAll @Scale(6) @DoubleRange(min = 3, max = 18) double lnRe,
      @ForAll @Scale(6) @DoubleRange(min = 1e-4, max = 0.05) double e) {
    Churchill c = at(lnRe, e);
    near(c.dLnRe, Ridders.slope(x -> at(x, e).lnF, lnRe, 0.01));
    near(c.dRough, Ridders.slope(x -> at(lnRe, x).lnF, e, 0.1 * e));
    near(c.dLnRe2, Ridders.slope(x -> at(x, e).dLnRe, lnRe, 0.01));
    near(c.dLnReRough, Ridders.slope(x -> at(lnRe, x).dLnRe, e, 0.1 * e));
  }

  private static void near(double exact, double oracle) {
    assertThat(exact).isCloseTo(oracle, within(1e-6 * Math.abs(oracle) + 1e-8));
  }

  /** The duct law's path is unique because friction falls no faster than 1/Re. */
  @Test
  void frictionFallsNoFasterThanLaminar() {
    for (double lnRe = -20; lnRe < 25; lnRe += 0.01) {
      assertThat(at(lnRe, 1e-3).dLnRe).isGreaterThanOrEqualTo(-1 - 1e-12);
    }
  }

  @Test
  void slopeByReynoldsNumberIsThatOfTheFactor() {
    double oracle = Ridders.slope(re -> FrictionFactor.churchill(re, 1e-4), 5e4, 100);
    assertThat(FrictionFactor.churchillByRe(5e4, 1e-4))
        .isCloseTo(oracle, within(1e-7 * Math.abs(oracle)));
  }
}
