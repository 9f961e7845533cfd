package dev.offtake.sparse;

/**
 * The elimination as a straight list: for each operation its target, its entry of L and its entry
 * of U.
 */
final class ListedElimination implements Elimination {
  private final int[] start;
  private final int[] target;
  private final int[] left;
  private final int[] up;

  /**
   * Writes the list.
   *
   * @param operations length of the list
   */
  ListedElimination(FactorLayout layout, int operations) {
    start = new int[layout.n + 1];
    target = new int[operations];
    left = new int[operations];
    up = new int[operations];
    int[] entry = new int[layout.n];
    int count = 0;
    for (int m = 0; m < layout.n; m++) {
      for (int e = layout.start[m]; e < layout.start[m + 1]; e++) {
        entry[layout.step[e]] = e;
      }
      for (int l = layout.start[m]; l < layout.diagonal[m]; l++) {
        int k = layout.step[l];
        for (int u = layout.diagonal[k] + 1; u < layout.start[k + 1]; u++) {
          target[count] = entry[layout.step[u]];
          left[count] = l;
          up[count++] = u;
        }
      }
      start[m + 1] = count;
    }
  }

  @Override
  public void row(int m, double[] factors) {
    int end = start[m + 1];
    for (int o = start[m]; o < end; o++) {
      factors[target[o]] -= factors[left[o]] * factors[up[o]];
    }
  }
}
