package dev.offtake.cause.chance;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What it takes to find one fault among several units by looking at one after the other, each look
 * mending what it finds.
 *
 * <p>The best order is that of falling chance over minutes, and its expected length Σ c·(1 − chance
 * of those before) (Kadane and Simon 1977; Heckerman, Breese and Rommelse 1995). The proof is an
 * exchange of neighbours.
 */
public final class Repair {
  private Repair() {}

  /**
   * The best order.
   *
   * @param chance that the fault is in each unit; sums to at most 1
   * @param minutes that each look takes; above zero
   */
  public static List<Integer> order(double[] chance, double[] minutes) {
    return IntStream.range(0, chance.length)
        .boxed()
        .sorted(Comparator.comparingDouble((Integer i) -> -chance[i] / minutes[i]))
        .toList();
  }

  /**
   * Expected minutes in the best order, going on until the fault is found or all have been seen.
   *
   * @param chance that the fault is in each unit; sums to at most 1
   * @param minutes that each look takes; above zero
   */
  public static double minutes(double[] chance, double[] minutes) {
    return minutes(order(chance, minutes), chance, minutes);
  }

  /** Expected minutes in a given order. */
  public static double minutes(List<Integer> order, double[] chance, double[] minutes) {
    double left = 1;
    double sum = 0;
    for (int unit : order) {
      sum += minutes[unit] * Math.max(0, left);
      left -= chance[unit];
    }
    return sum;
  }
}
