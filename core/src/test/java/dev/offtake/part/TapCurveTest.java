package dev.offtake.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class TapCurveTest {
  private static final double[] N = {0.62, 0.80, 0.92, 0.99};
  private static final double[] P = {1.55, 3.7, 6.2, 8.0};
  private static final double[] T = {1.25, 1.6, 1.9, 2.06};
  private final TapCurve curve = new TapCurve(N, P, T);

  @Test
  void meetsEveryPoint() {
    for (int i = 0; i < N.length; i++) {
      assertThat(curve.pressure(N[i], 0.05)).isCloseTo(P[i], within(4 * Math.ulp(P[i])));
      assertThat(curve.temperature(N[i])).isCloseTo(T[i], within(4 * Math.ulp(T[i])));
      assertThat(curve.beyond(N[i])).isZero();
    }
  }

  @Test
  void isAPowerLawBetweenAndBeyond() {
    double middle = Math.sqrt(N[1] * N[2]);
    double expected = 1 + Math.sqrt((P[1] - 1) * (P[2] - 1));
    assertThat(curve.pressure(middle, 0)).isCloseTo(expected, within(1e-12));
    double exponent = Math.log((P[3] - 1) / (P[2] - 1)) / Math.log(N[3] / N[2]);
    double above = 1 + (P[3] - 1) * Math.pow(1.05 / N[3], exponent);
    assertThat(curve.pressure(1.05, 0)).isCloseTo(above, within(1e-11));
    assertThat(curve.beyond(0.99 * 1.1)).isCloseTo(0.1, within(1e-12));
    assertThat(curve.beyond(0.62 * 0.8)).isCloseTo(-0.2, within(1e-12));
  }

  @Test
  void bendsByTheStatedShareAtMidGapAndByOnePercentPerPercentBeyond() {
    double middle = Math.sqrt(N[0] * N[1]);
    double straight = curve.pressure(middle, 0) - 1;
    assertThat((curve.pressure(middle, 0.05) - 1) / straight).isCloseTo(1.05, within(1e-12));
    double outside = 0.99 * 1.08;
    double level = curve.pressure(outside, 0) - 1;
    assertThat((curve.pressure(outside, 0.05) - 1) / level).isCloseTo(1.08, within(1e-12));
  }

  @Property(tries = 500, seed = "11")
  void risesWithSpeedHoweverItBends(
      @ForAll @DoubleRange(min = 0.62, max = 0.9899) double speed,
      @ForAll @DoubleRange(min = -0.2, max = 0.2) double bump) {
    assertThat(curve.pressure(speed + 1e-4, bump)).isGreaterThan(curve.pressure(speed, bump));
    assertThat(curve.temperature(speed + 1e-4)).isGreaterThan(curve.temperature(speed));
  }
}
