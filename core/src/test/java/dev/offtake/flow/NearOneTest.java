package dev.offtake.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Against the Java library's own, which is within one unit in the last place. */
class NearOneTest {
  private static final double FEW_ULPS = 1e-15;

  @Test
  void risesLikeTheLibrarys() {
    SplittableRandom random = new SplittableRandom(1);
    for (int i = 0; i < 100_000; i++) {
      double x = (random.nextBoolean() ? 1 : -1) * Math.exp(random.nextDouble(-40, 5));
      double known = Math.expm1(x);
      assertEquals(known, NearOne.expm1(x), FEW_ULPS * Math.abs(known), () -> "at " + x);
    }
  }

  @Test
  void takesLogarithmsLikeTheLibrarys() {
    SplittableRandom random = new SplittableRandom(2);
    for (int i = 0; i < 100_000; i++) {
      double x =
          random.nextBoolean()
              ? Math.exp(random.nextDouble(-40, 40))
              : -Math.exp(random.nextDouble(-40, -1e-3));
      double known = Math.log1p(x);
      assertEquals(known, NearOne.log1p(x), FEW_ULPS * Math.abs(known), () -> "at " + x);
    }
  }

  @Test
  void isExactAtZero() {
    assertEquals(0, NearOne.expm1(0));
    assertEquals(0, NearOne.log1p(0));
  }
}
