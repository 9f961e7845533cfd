package dev.offtake.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class OpeningCurveTest {
  private static final List<OpeningCurve> CURVES =
      List.of(
          OpeningCurve.named("linear"),
          OpeningCurve.named("Butterfly"),
          OpeningCurve.named(" equal percentage "),
          OpeningCurve.table(new double[] {0, 0.1, 0.5, 1}, new double[] {0, 0.3, 0.3, 1}));

  @Test
  void allRunFromShutToOpenAndNeverFall() {
    for (OpeningCurve curve : CURVES) {
      assertThat(curve.area(0)).isZero();
      assertThat(curve.area(1)).isCloseTo(1, within(1e-15));
      assertThat(curve.area(-3)).isZero();
      assertThat(curve.area(7)).isCloseTo(1, within(1e-15));
      for (double x = 0; x < 1; x += 1e-3) {
        assertThat(curve.area(x + 1e-3)).isGreaterThanOrEqualTo(curve.area(x) - 1e-15);
        assertThat(curve.slope(x)).isGreaterThanOrEqualTo(-1e-14);
      }
    }
  }

  @Test
  void slopesAgreeWithDifferences() {
    for (OpeningCurve curve : CURVES) {
      for (double x = 0.0137; x < 0.98; x += 0.0251) {
        double oracle = Ridders.slope(curve::area, x, 1e-3);
        assertThat(curve.slope(x)).isCloseTo(oracle, within(1e-8));
      }
    }
  }

  @Test
  void knownPlaces() {
    assertThat(CURVES.get(1).area(2.0 / 3)).isCloseTo(0.5, within(1e-15)); // cos 60° = ½
    assertThat(CURVES.get(2).area(0.5)).isCloseTo((Math.sqrt(50) - 1) / 49, within(1e-15));
    assertThat(CURVES.get(3).area(0.1)).isEqualTo(0.3);
    assertThat(CURVES.get(3).area(0.3)).isCloseTo(0.3, within(1e-15));
  }

  @Test
  void mistakesAreNamedWithTheirMending() {
    assertThatThrownBy(() -> OpeningCurve.named("quick"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("\"quick\"")
        .hasMessageContaining("use linear");
    assertThatThrownBy(() -> OpeningCurve.table(new double[] {0, 1}, new double[] {1, 0}))
        .hasMessageContaining("must rise");
    assertThatThrownBy(() -> OpeningCurve.table(new double[] {0, 0.9}, new double[] {0, 1}))
        .hasMessageContaining("add the ends");
    assertThatThrownBy(() -> OpeningCurve.table(new double[] {0}, new double[] {0}))
        .hasMessageContaining("two or more");
  }
}
