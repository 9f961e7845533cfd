package dev.offtake.measure;

/**
 * A fixed piece of arithmetic that times are compared with: products, a root and a logarithm in a
 * chain, as in the laws of flow, without memory to wait for.
 */
final class Yardstick {
  private static final int ROUNDS = 100;

  private double x = 1;

  /** One unit: a hundred rounds of x ← ½ ln(1 + √(2 + x²)). */
  double unit() {
    for (int i = 0; i < ROUNDS; i++) {
      x = 0.5 * Math.log(1 + Math.sqrt(2 + x * x));
    }
    return x;
  }
}
