package dev.offtake.time;

/**
 * The coefficients of a stiffly accurate, L-stable method of third order with an embedded one of
 * second: one explicit and three implicit stages with one diagonal (ESDIRK3(2)4L[2]SA, the implicit
 * part of ARK3(2)4L[2]SA; Kennedy and Carpenter, Applied Numerical Mathematics 44 (2003) 139, from
 * memory; a test checks the order conditions).
 */
final class Esdirk {
  /** Diagonal. */
  static final double GAMMA = 1767732205903.0 / 4055673282236.0;

  /** Number of stages. */
  static final int STAGES = 4;

  private static final double[][] A = {
    {0},
    {GAMMA, GAMMA},
    {2746238789719.0 / 10658868560708.0, -640167445237.0 / 6845629431997.0, GAMMA},
    {
      1471266399579.0 / 7840856788654.0,
      -4482444167858.0 / 7529745528177.0,
      11266239266428.0 / 11593286722821.0,
      GAMMA
    }
  };

  private static final double[] EMBEDDED = {
    2756255671327.0 / 12835298489170.0,
    -10771552573575.0 / 22201958757719.0,
    9247589265047.0 / 10645013368117.0,
    2193209047091.0 / 5459859503100.0
  };

  private static final double[] C = {0, 2 * GAMMA, 0.6, 1};

  private Esdirk() {}

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
