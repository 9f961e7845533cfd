package dev.offtake.measure.cases;

import java.util.List;

/**
 * What is read at one stop.
 *
 * @param stop power and line-up
 * @param crew whether a crew says it in words
 * @param items what is read, in this order
 */
record Occasion(Stop stop, boolean crew, List<Item> items) {
  /** Keeps its list. */
  Occasion {
    items = List.copyOf(items);
  }
}
