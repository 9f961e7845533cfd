package dev.offtake.measure.cases;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The plant's own laws against formulas and tables. */
class LawsTest {
  /**
   * Shares of the choked flow with b = 0.30, p1 = 600 kPa and m = ½, recomputed from the formula of
   * ISO 6358 (from memory); 0.3 % for the rounding at zero flow.
   */
  @ParameterizedTest
  @CsvSource({"100,1", "210,0.997446", "300,0.958315", "400,0.851835", "500,0.647689"})
  void flowFollowsTheConductanceForm(double p2, double share) {
    double choked = Gas.flow(1e-3, 0.3, 600e3, 450, 50e3, 450);
    assertThat(Gas.flow(1e-3, 0.3, 600e3, 450, p2 * 1e3, 450) / choked)
        .isCloseTo(share, within(0.003));
  }

  /**
   * Choked flow of a nozzle with γ = 1.4 is 0.04041842 p A/√T in SI with R = 287 (Cengel); a γ of
   * 1.39 takes 0.3 % off.
   */
  @Test
  void chokedFlowIsThatOfANozzle() {
    double flow = Gas.flow(1, 0.5, 1e5, 400, 1e4, 400);
    assertThat(flow).isCloseTo(0.04041842 * 1e5 / Math.sqrt(400), within(0.005 * flow));
  }

  @Test
  void flowTurnsWithThePressures() {
    double there = Gas.flow(1e-3, 0.4, 2e5, 350, 1.9e5, 500);
    double back = Gas.flow(1e-3, 0.4, 1.9e5, 500, 2e5, 350);
    assertThat(back).isEqualTo(-there);
    assertThat(Gas.flow(1e-3, 0.4, 2e5, 350, 2e5, 350)).isZero();
  }

  @Test
  void aCurveMeetsItsPointsAndRises() {
    double[] x = {0.62, 0.80, 0.99};
    double[] y = {0.4, 1.3, 2.1};
    Curve curve = new Curve(x, y);
    double before = Double.NEGATIVE_INFINITY;
    for (double at = 0.5; at < 1.1; at += 0.001) {
      assertThat(curve.at(at)).isGreaterThan(before);
      before = curve.at(at);
    }
    for (int i = 0; i < x.length; i++) {
      assertThat(curve.at(x[i])).isCloseTo(y[i], within(1e-12));
      assertThat(curve.between(x[i])).isCloseTo(0, within(1e-12));
    }
    assertThat(curve.between(0.71)).isCloseTo(1, within(1e-9));
  }

  /** US Standard Atmosphere 1976 at 35,000 ft: 23,842 Pa, 218.81 K. */
  @Test
  void theAirOfCruiseIsStandard() {
    Outside air = Power.CRUISE.day();
    assertThat(air.p()).isCloseTo(23_842, within(30.0));
    assertThat(air.t()).isCloseTo(218.81, within(0.05));
  }

  /** The plate of the precooler, SD p.9: 80 lb/min from 610 to 400 °F by 120 lb/min of 130 °F. */
  @Test
  void theCoolerCoolsAsItsPlateSays() {
    Cooler cooler = new Cooler(Nominal.knobs(), Side.LEFT, 1e-2);
    double outlet =
        cooler.outlet(80 * Shop.LB_MIN, Shop.kelvin(610), 120 * Shop.LB_MIN, Shop.kelvin(130));
    assertThat(outlet).isCloseTo(Shop.kelvin(400), within(0.1));
  }

  /** Points of the file's tables. */
  @ParameterizedTest
  @CsvSource({"44,0", "38,100", "28,180"})
  void theAuxiliaryUnitGivesWhatItsTableSays(double psig, double flow) {
    Source source =
        new Source(Nominal.knobs(), Parts.AUXILIARY, Nominal.AUXILIARY, Nominal.AUXILIARY_HEAT);
    double duct = (psig - 0.3) * Shop.PSI + Shop.STANDARD_P;
    assertThat(source.flow(true, duct, Shop.STANDARD_P) / Shop.LB_MIN)
        .isCloseTo(flow, within(0.01));
  }

  @Test
  void linearSystemsAreSolved() {
    SplittableRandom chance = new SplittableRandom(7);
    double[][] a = new double[9][9];
    double[] x = new double[9];
    double[] b = new double[9];
    for (int i = 0; i < 9; i++) {
      x[i] = chance.nextGaussian();
      for (int j = 0; j < 9; j++) {
        a[i][j] = chance.nextGaussian();
      }
    }
    for (int i = 0; i < 9; i++) {
      for (int j = 0; j < 9; j++) {
        b[i] += a[i][j] * x[j];
      }
    }
    assertThat(Dense.solve(a, b)).containsExactly(x, within(1e-9));
  }
}
