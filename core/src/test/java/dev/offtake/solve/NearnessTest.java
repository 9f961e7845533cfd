package dev.offtake.solve;

import static org.assertj.core.api.Assertions.assertThat;

import dev.offtake.sparse.SparseLu;
import dev.offtake.sparse.SparsePattern;
import org.junit.jupiter.api.Test;

/** On one equation, whose Jacobian is 2: the step that would follow is half the residual. */
class NearnessTest {
  private static final double[] STEP = {-1};

  private static boolean gained(double residual, double length, double largest) {
    SparseLu factors = new SparseLu(SparsePattern.of(1, new int[] {0}, new int[] {0}));
    assertThat(factors.order(new double[] {2})).isTrue();
    return new Nearness(new double[] {largest})
        .gained(factors, new double[] {residual}, STEP, length);
  }

  @Test
  void aWholeStepHasToShortenTheNextByFarMoreThanAShortOne() {
    assertThat(gained(0.5, 1, 1)).isTrue(); // next: a quarter
    assertThat(gained(1, 1, 1)).isFalse(); // next: a half
    assertThat(gained(1, 0.5, 1)).isTrue();
    assertThat(gained(1.9, 0.01, 1)).isTrue();
    assertThat(gained(2, 0.01, 1)).isFalse(); // next: as long
  }

  @Test
  void whatIsNotANumberIsNoGain() {
    assertThat(gained(Double.NaN, 0.5, 1)).isFalse();
  }

  @Test
  void itHangsOnNoUnit() {
    assertThat(gained(0.5, 1, 150)).isTrue();
    assertThat(gained(1, 1, 150)).isFalse();
  }
}
