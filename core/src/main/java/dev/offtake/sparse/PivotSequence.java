package dev.offtake.sparse;

/**
 * Pivots in the order in which they are taken, and what each leaves in the factors.
 *
 * @param rows row of each pivot
 * @param columns column of each pivot
 * @param lower rows below each pivot in L
 * @param upper columns right of each pivot in U
 * @param failedRow a row that depends on the rows before it, or −1 when the sequence is complete
 */
record PivotSequence(int[] rows, int[] columns, int[][] lower, int[][] upper, int failedRow) {
  boolean complete() {
    return failedRow < 0;
  }

  /** Multiply–subtract operations of the elimination. */
  long operations() {
    long sum = 0;
    for (int k = 0; k < rows.length; k++) {
      sum += (long) lower[k].length * upper[k].length;
    }
    return sum;
  }
}
