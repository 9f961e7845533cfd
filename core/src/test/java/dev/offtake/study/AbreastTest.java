package dev.offtake.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class AbreastTest {
  @Test
  void givesResultsInTheirOrderThoughPiecesDifferInLength() {
    List<Integer> squares =
        Abreast.all(200, 0, 1, share -> {}, i -> i % 7 == 0 ? slowly(i * i) : i * i);
    assertThat(squares).isEqualTo(IntStream.range(0, 200).mapToObj(i -> i * i).toList());
  }

  @Test
  void tellsAShareThatOnlyGrowsFromWhereItWasToWhereItGoes() {
    List<Double> told = new ArrayList<>();
    Abreast.all(50, 0.25, 0.75, told::add, i -> i);
    assertThat(told).hasSize(50).isSorted().endsWith(0.75);
    assertThat(told.get(0)).isEqualTo(0.26);
  }

  @Test
  void hasNothingToDoWhereThereAreNoPieces() {
    assertThat(Abreast.all(0, 0, 1, share -> {}, i -> i)).isEmpty();
  }

  @Test
  void doesNoMorePiecesOnceItIsStopped() {
    AtomicInteger begun = new AtomicInteger();
    assertThatThrownBy(
            () ->
                Abreast.all(
                    100_000,
                    0,
                    1,
                    share -> {
                      throw new CancellationException("enough");
                    },
                    i -> begun.incrementAndGet()))
        .isInstanceOf(CancellationException.class);
    // One for each worker, and what others began before the stop was seen.
    assertThat(begun.get()).isLessThan(1000);
  }

  private static int slowly(int result) {
    double sum = 0;
    for (int i = 1; i < 100_000; i++) {
      sum += Math.sqrt(i);
    }
    return sum > 0 ? result : 0;
  }
}
