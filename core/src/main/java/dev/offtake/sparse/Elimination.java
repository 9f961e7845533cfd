package dev.offtake.sparse;

/** Subtracts the rows before from a row of the factors. */
interface Elimination {
  /**
   * Makes a row of factors out of a row of the matrix.
   *
   * @param m step whose row is loaded
   * @param factors entries; rows before are finished, their U divided by the pivot
   */
  void row(int m, double[] factors);
}
