package dev.offtake.stability;

import java.util.ArrayList;
import java.util.List;

/**
 * Groups of states that act on each other in a circle: the strongly connected components of the
 * matrix, by two searches (Sharir 1981, as in Cormen et al., Introduction to Algorithms).
 *
 * <p>Put into their order the matrix is block triangular, so that its eigenvalues are those of the
 * groups.
 */
final class Circles {
  private final double[][] matrix;
  private final boolean[] seen;

  private Circles(double[][] matrix) {
    this.matrix = matrix;
    seen = new boolean[matrix.length];
  }

  /** The groups; each index of the matrix is in one of them. */
  static List<int[]> of(double[][] matrix) {
    List<Integer> order = new ArrayList<>();
    Circles forward = new Circles(matrix);
    for (int i = 0; i < matrix.length; i++) {
      forward.visit(i, true, order);
    }
    List<int[]> groups = new ArrayList<>();
    Circles backward = new Circles(matrix);
    for (int k = order.size() - 1; k >= 0; k--) {
      List<Integer> group = new ArrayList<>();
      backward.visit(order.get(k), false, group);
      if (!group.isEmpty()) {
        groups.add(group.stream().mapToInt(Integer::intValue).sorted().toArray());
      }
    }
    return groups;
  }

  /** Adds what can be reached and was not yet seen, each after what it leads to. */
  private void visit(int from, boolean forward, List<Integer> reached) {
    if (seen[from]) {
      return;
    }
    seen[from] = true;
    for (int to = 0; to < matrix.length; to++) {
      if ((forward ? matrix[from][to] : matrix[to][from]) != 0) {
        visit(to, forward, reached);
      }
    }
    reached.add(from);
  }
}
