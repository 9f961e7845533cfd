package dev.offtake.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.air.GasState;
import java.util.function.DoubleUnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

/** What every flow law promises; each law adds only itself and its own numbers. */
abstract class FlowLawContract {
  abstract FlowLaw law();

  /** A usual size of the law. */
  abstract double size();

  static Flow flow(FlowLaw law, double lnP1, double t1, double lnP2, double t2, double size) {
    Flow out = new Flow();
    law.evaluate(TestGas.at(lnP1, t1), TestGas.at(lnP2, t2), size, out);
    return out;
  }

  private double mdot(double lnP1, double t1, double lnP2, double t2) {
    return flow(law(), lnP1, t1, lnP2, t2, size()).mdot;
  }

  @Property(tries = 300, seed = "11")
  void partialsAgreeWithDifferencesOverTheWholeRange(
      @ForAll @Scale(6) @DoubleRange(min = -1, max = 3) double lnP1,
      @ForAll @Scale(6) @DoubleRange(min = -1, max = 3) double lnP2,
      @ForAll @Scale(6) @DoubleRange(min = 220, max = 900) double t1,
      @ForAll @Scale(6) @DoubleRange(min = 220, max = 900) double t2) {
    assertPartials(lnP1, t1, lnP2, t2);
  }

  @Property(tries = 200, seed = "12")
  void partialsAgreeWithDifferencesInsideTheStillBand(
      @ForAll @Scale(6) @DoubleRange(min = -1, max = 3) double lnP1,
      @ForAll @Scale(6) @DoubleRange(min = -0.95, max = 0.95) double s,
      @ForAll @Scale(6) @DoubleRange(min = 220, max = 900) double t1,
      @ForAll @Scale(6) @DoubleRange(min = 220, max = 900) double t2) {
    assertPartials(lnP1, t1, lnP1 - s * NearZero.BAND, t2);
  }

  @Property(tries = 200, seed = "13")
  void partialsAgreeWithDifferencesJustOutsideTheStillBand(
      @ForAll @Scale(6) @DoubleRange(min = -1, max = 3) double lnP1,
      @ForAll @Scale(6) @DoubleRange(min = 1.1, max = 30) double s,
      @ForAll @Scale(6) @DoubleRange(min = 220, max = 900) double t1) {
    assertPartials(lnP1, t1, lnP1 - s * NearZero.BAND, 300);
    assertPartials(lnP1 - s * NearZero.BAND, 300, lnP1, t1);
  }

  private void assertPartials(double lnP1, double t1, double lnP2, double t2) {
    double l = Math.abs(lnP1 - lnP2);
    if (l < 1e-6) { // the second derivative jumps at zero; the continuity test looks there
      return;
    }
    Flow f = flow(law(), lnP1, t1, lnP2, t2, size());
    double h = Math.min(0.02, 0.4 * Math.min(Math.abs(NearZero.BAND - l), l));
    compare(f, f.dLnP1, x -> mdot(x, t1, lnP2, t2), lnP1, h, 1);
    compare(f, f.dLnP2, x -> mdot(lnP1, t1, x, t2), lnP2, h, 1);
    compare(f, f.dT1, x -> mdot(lnP1, x, lnP2, t2), t1, 5, 100);
    compare(f, f.dT2, x -> mdot(lnP1, t1, lnP2, x), t2, 5, 100);
    compare(
        f, f.dSize, x -> flow(law(), lnP1, t1, lnP2, t2, x).mdot, size(), 0.02 * size(), size());
  }

  private void compare(
      Flow f, double exact, DoubleUnaryOperator curve, double x, double h, double scale) {
    double oracle = best(curve, x, h, exact);
    double unit = Math.abs(f.mdot) / scale;
    // One part in 1e6 of the slope, or what rounding leaves of the difference quotient.
    double room = 1e-6 * Math.abs(oracle) + 1e-7 * unit + 3e-12 * Math.abs(f.mdot) / (0.07 * h);
    assertThat(exact).isCloseTo(oracle, within(room + 1e-14));
  }

  /**
   * Second derivatives jump at the band, the kink and the choke: take the step that stays clear.
   */
  private static double best(DoubleUnaryOperator curve, double x, double h, double exact) {
    double best = Ridders.slope(curve, x, h);
    for (double step = h / 8; step > h / 100; step /= 8) {
      double next = Ridders.slope(curve, x, step);
      best = Math.abs(next - exact) < Math.abs(best - exact) ? next : best;
    }
    return best;
  }

  @Property(tries = 300, seed = "14")
  void flowNeverFallsWhenTheDriveRises(
      @ForAll @Scale(6) @DoubleRange(min = -1, max = 3) double lnP1,
      @ForAll @Scale(6) @DoubleRange(min = -1, max = 3) double lnP2,
      @ForAll @Scale(6) @DoubleRange(min = 250, max = 900) double t1,
      @ForAll @Scale(6) @DoubleRange(min = 250, max = 900) double t2) {
    Flow f = flow(law(), lnP1, t1, lnP2, t2, size());
    assertThat(f.dLnP1).isGreaterThanOrEqualTo(0);
    assertThat(f.dLnP2).isLessThanOrEqualTo(0);
    double least = f.mdot - 1e-11 * Math.abs(f.mdot);
    assertThat(mdot(lnP1 + 1e-3, t1, lnP2, t2)).isGreaterThanOrEqualTo(least);
  }

  @Property(tries = 200, seed = "15")
  void flowIsMonotoneThroughZero(
      @ForAll @Scale(6) @DoubleRange(min = -1.2, max = 1.2) double s,
      @ForAll @Scale(6) @DoubleRange(min = 250, max = 900) double t1,
      @ForAll @Scale(6) @DoubleRange(min = 250, max = 900) double t2) {
    double step = 0.01 * NearZero.BAND;
    double here = mdot(1, t1, 1 - s * NearZero.BAND, t2);
    double more = mdot(1, t1, 1 - s * NearZero.BAND - step, t2);
    assertThat(more).isGreaterThanOrEqualTo(here);
  }

  @Property(tries = 200, seed = "16")
  void swappedEndsReverseTheFlow(
      @ForAll @Scale(6) @DoubleRange(min = -1, max = 3) double lnP1,
      @ForAll @Scale(6) @DoubleRange(min = -1, max = 3) double lnP2,
      @ForAll @Scale(6) @DoubleRange(min = 250, max = 900) double t1,
      @ForAll @Scale(6) @DoubleRange(min = 250, max = 900) double t2) {
    Flow f = flow(law(), lnP1, t1, lnP2, t2, size());
    Flow g = flow(law(), lnP2, t2, lnP1, t1, size());
    assertThat(g.mdot).isEqualTo(-f.mdot);
    assertThat(g.dLnP2).isEqualTo(-f.dLnP1);
    assertThat(g.dT2).isEqualTo(-f.dT1);
    assertThat(g.share1).isCloseTo(1 - f.share1, within(1e-15));
    assertThat(g.choked).isEqualTo(f.choked);
  }

  @Test
  void equalPressuresPassNothingWhateverTheTemperatures() {
    Flow f = flow(law(), 1.3, 300, 1.3, 800, size());
    assertThat(f.mdot).isZero();
    assertThat(f.dT1).isZero();
    assertThat(f.dSize).isZero();
    assertThat(f.share1).isEqualTo(0.5);
  }

  @Test
  void flowAndSlopesAreContinuousAtTheEdgesOfTheBandAndAtZero() {
    for (double s : new double[] {-1, 0, 1}) {
      double lnP2 = 1 - Math.signum(s) * -Math.log1p(-Math.abs(s) * NearZero.BAND);
      Flow below = flow(law(), 1, 700, lnP2 + 1e-12, 300, size());
      Flow above = flow(law(), 1, 700, lnP2 - 1e-12, 300, size());
      double unit = flow(law(), 1, 700, 1 - 2e-4, 300, size()).mdot + 1e-15;
      assertThat(above.mdot).isCloseTo(below.mdot, within(1e-6 * unit));
      assertThat(above.dLnP1).isCloseTo(below.dLnP1, within(1e-6 * unit / NearZero.BAND));
      assertThat(above.dT1).isCloseTo(below.dT1, within(1e-6 * unit / 300));
      assertThat(above.dSize).isCloseTo(below.dSize, within(1e-6 * unit / size()));
      assertThat(above.share1).isCloseTo(below.share1, within(1e-6));
    }
  }

  @Test
  void shareOfEnthalpyIsOneForwardZeroInReverseAndHasItsSlopeBetween() {
    assertThat(flow(law(), 1, 400, 0.5, 300, size()).share1).isEqualTo(1);
    assertThat(flow(law(), 0.5, 400, 1, 300, size()).share1).isZero();
    double lnP2 = 1 - 0.4e-4;
    Flow f = flow(law(), 1, 400, lnP2, 300, size());
    double slope = Ridders.slope(x -> flow(law(), 1, 400, x, 300, size()).share1, lnP2, 1e-5);
    assertThat(f.dShareLnP2).isCloseTo(slope, within(1e-6 * Math.abs(slope)));
    assertThat(f.dShareLnP1).isEqualTo(-f.dShareLnP2);
  }

  @Test
  void aClosedElementPassesNothing() {
    Flow f = flow(law(), 2, 400, 0, 300, 0);
    assertThat(f.mdot).isZero();
    assertThat(f.dLnP1).isZero();
  }

  @Test
  void extremeInputsStayFinite() {
    double[] lnPs = {-12, -3, 0, 3, 12};
    double[] ts = {150, 3000};
    for (double lnP1 : lnPs) {
      for (double lnP2 : lnPs) {
        for (double t : ts) {
          for (double size : new double[] {0, 1e-12, size(), 1e3 * size()}) {
            assertFinite(flow(law(), lnP1, t, lnP2, 300, size));
          }
        }
      }
    }
  }

  private static void assertFinite(Flow f) {
    double sum = f.mdot + f.dLnP1 + f.dLnP2 + f.dT1 + f.dT2 + f.dSize + f.dShareLnP1 + f.dShareLnP2;
    assertThat(Double.isFinite(sum)).isTrue();
  }

  @Test
  void aChokedFlowDoesNotKnowItsDownstream() {
    GasState up = TestGas.at(3, 500);
    Flow a = new Flow();
    Flow b = new Flow();
    law().evaluate(up, TestGas.at(-1.5, 300), size(), a);
    law().evaluate(up, TestGas.at(-2, 700), size(), b);
    assertThat(a.choked).isTrue();
    assertThat(b.mdot).isCloseTo(a.mdot, within(1e-14 * a.mdot));
    assertThat(a.dLnP2).isZero();
    assertThat(a.dT2).isZero();
  }
}
