package dev.offtake.network;

import dev.offtake.part.Branch;
import dev.offtake.sparse.SparsePattern;
import java.util.ArrayList;
import java.util.List;

/** Collects where the Jacobian of a network can differ from zero. */
final class PatternBuilder {
  private final int rows;
  private final int[] columns;
  private final int inner;
  private final List<int[]> pairs = new ArrayList<>();

  PatternBuilder(int rows, int[] columns, int inner, Branch[][] branches, SenseRow[] senses) {
    this.rows = rows;
    this.columns = columns;
    this.inner = inner;
    for (int i = 0; i < inner; i++) {
      // The mass row needs its own diagonal even where all flows are user schedules: pseudo-time
      // adds storage there.
      add(2 * i, 2 * i);
      add(2 * i + 1, 2 * i + 1);
    }
    for (Branch[] ofPart : branches) {
      for (Branch branch : ofPart) {
        addEnd(branch, branch.from);
        addEnd(branch, branch.to);
      }
    }
    for (SenseRow sense : senses) {
      addSense(sense);
    }
  }

  private void addEnd(Branch branch, int point) {
    if (point >= inner) {
      return;
    }
    for (int variable : branch.variables) {
      if (columns[variable] >= 0) {
        add(2 * point, columns[variable]);
        add(2 * point + 1, columns[variable]);
      }
    }
  }

  private void addSense(SenseRow sense) {
    add(sense.row(), columns[sense.variable()]);
    for (int variable : sense.branch().variables) {
      if (columns[variable] >= 0) {
        add(sense.row(), columns[variable]);
      }
    }
  }

  private void add(int row, int column) {
    pairs.add(new int[] {row, column});
  }

  SparsePattern pattern() {
    int[] r = pairs.stream().mapToInt(p -> p[0]).toArray();
    int[] c = pairs.stream().mapToInt(p -> p[1]).toArray();
    return SparsePattern.of(rows, r, c);
  }
}
