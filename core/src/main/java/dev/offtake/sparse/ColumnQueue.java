package dev.offtake.sparse;

import java.util.Arrays;

/**
 * Columns in chains by the number of their entries, so that the shortest are found without a
 * search.
 */
final class ColumnQueue {
  private static final int NONE = -1;

  private final int[] head;
  private final int[] next;
  private final int[] previous;
  private final int[] length;

  ColumnQueue(int n) {
    head = new int[n + 1];
    next = new int[n];
    previous = new int[n];
    length = new int[n];
    Arrays.fill(head, NONE);
  }

  /** First column with the given number of entries, or −1. */
  int first(int entries) {
    return head[entries];
  }

  /** Column behind the given one in its chain, or −1. */
  int after(int column) {
    return next[column];
  }

  void add(int column, int entries) {
    length[column] = entries;
    previous[column] = NONE;
    next[column] = head[entries];
    if (head[entries] != NONE) {
      previous[head[entries]] = column;
    }
    head[entries] = column;
  }

  void remove(int column) {
    if (previous[column] == NONE) {
      head[length[column]] = next[column];
    } else {
      next[previous[column]] = next[column];
    }
    if (next[column] != NONE) {
      previous[next[column]] = previous[column];
    }
  }
}
