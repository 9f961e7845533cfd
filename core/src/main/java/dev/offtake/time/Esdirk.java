package dev.offtake.time;

/**
 * The coefficients of a stiffly accurate, L-stable method of third order with an embedded one of
 * second: one explicit and three implicit stages with one diagonal (ESDIRK3(2)4L[2]SA, the implicit
 * part of ARK3(2)4L[2]SA; Kennedy and Carpenter, Applied Numerical Mathematics 44 (2003) 139).
 *
 * <p>The diagonal γ, the instants 0, 2γ, 3/5 and 1 and the embedded weights are from memory; the
 * rest is computed from the order conditions, and a test checks all of them.
 */
final class Esdirk {
  /** Diagonal: the root of γ³ − 3γ² + 3γ/2 = 1/6 near 0.436. */
  static final double GAMMA = diagonal();

  /** Number of stages. */
  static final int STAGES = 4;

  private static final double[] C = {0, 2 * GAMMA, 0.6, 1};

  private static final double[][] A = weights();

  private static final double[] EMBEDDED = {
    2756255671327.0 / 12835298489170.0,
    -10771552573575.0 / 22201958757719.0,
    9247589265047.0 / 10645013368117.0,
    2193209047091.0 / 5459859503100.0
  };

  private Esdirk() {}

  private static double diagonal() {
    double x = 0.436;
    for (int i = 0; i < 10; i++) {
      x -= (((x - 3) * x + 1.5) * x - 1 / 6.0) / ((3 * x - 6) * x + 1.5);
    }
    return x;
  }

  /**
   * Σb = 1, Σbc = 1/2, Σbc² = 1/3 and b₄ = γ give the last row; Σ b a c = 1/6 and the instant of
   * the third stage give that one.
   */
  private static double[][] weights() {
    double c2 = C[1];
    double c3 = C[2];
    double first = 1 / 2.0 - GAMMA;
    double second = 1 / 3.0 - GAMMA;
    double b3 = (second - first * c2) / (c3 * (c3 - c2));
    double b2 = (first - b3 * c3) / c2;
    double last = GAMMA * (b2 * c2 + b3 * c3 + GAMMA);
    double a32 = ((1 / 6.0 - last - b2 * GAMMA * c2) / b3 - GAMMA * c3) / c2;
    return new double[][] {
      {0}, {GAMMA, GAMMA}, {c3 - GAMMA - a32, a32, GAMMA}, {1 - b2 - b3 - GAMMA, b2, b3, GAMMA}
    };
  }

  /** Weight of an earlier stage's rate in a stage. */
  static double a(int stage, int earlier) {
    return A[stage][earlier];
  }

  /** Instant of a stage as a share of the step. */
  static double c(int stage) {
    return C[stage];
  }

  /** Weight of a stage's rate in the error of the step. */
  static double error(int stage) {
    return A[STAGES - 1][stage] - EMBEDDED[stage];
  }

  /** Weight of a stage's rate in the embedded answer. */
  static double embedded(int stage) {
    return EMBEDDED[stage];
  }
}
