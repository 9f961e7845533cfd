package dev.offtake.sparse;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

class SparsePatternTest {
  @Test
  void numbersItsPlacesRowByRow() {
    SparsePattern pattern = SparsePattern.of(3, new int[] {2, 0, 1, 0}, new int[] {1, 2, 1, 0});

    assertThat(pattern.order()).isEqualTo(3);
    assertThat(pattern.size()).isEqualTo(4);
    assertThat(pattern.slot(0, 0)).isEqualTo(0);
    assertThat(pattern.slot(0, 2)).isEqualTo(1);
    assertThat(pattern.slot(1, 1)).isEqualTo(2);
    assertThat(pattern.slot(2, 1)).isEqualTo(3);
  }

  @Test
  void knowsWhereItHasNoPlace() {
    SparsePattern pattern = SparsePattern.of(2, new int[] {0}, new int[] {1});

    assertThat(pattern.slot(0, 0)).isEqualTo(-1);
    assertThat(pattern.slot(1, 1)).isEqualTo(-1);
    assertThat(pattern.slot(-1, 0)).isEqualTo(-1);
    assertThat(pattern.slot(0, 2)).isEqualTo(-1);
    assertThat(pattern.slot(2, 0)).isEqualTo(-1);
  }

  @Test
  void keepsDoubledPlacesOnce() {
    SparsePattern pattern = SparsePattern.of(2, new int[] {1, 0, 1, 1}, new int[] {0, 0, 0, 0});

    assertThat(pattern.size()).isEqualTo(2);
    assertThat(pattern.slot(1, 0)).isEqualTo(1);
  }

  @Test
  void canBeEmpty() {
    SparsePattern pattern = SparsePattern.of(0, new int[0], new int[0]);

    assertThat(pattern.order()).isZero();
    assertThat(pattern.size()).isZero();
    assertThat(pattern.slot(0, 0)).isEqualTo(-1);
  }

  @Test
  void refusesPlacesOutside() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SparsePattern.of(2, new int[] {0}, new int[] {2}))
        .withMessageContaining("(0, 2)");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SparsePattern.of(2, new int[] {-1}, new int[] {0}));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SparsePattern.of(2, new int[] {0, 1}, new int[] {0}));
  }
}
