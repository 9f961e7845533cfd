package dev.offtake.cause.find;

import dev.offtake.cause.chance.Repair;
import dev.offtake.part.Access;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * Looking at removable units one after the other until the fault is found. Getting to several of
 * them the same way is paid once; a unit that comes off its duct or goes to the bench is paid for
 * each.
 *
 * <p>Without anything shared the order and its minutes are those of {@link Repair}; with shared
 * access each next unit is that of the largest chance over the minutes that are still to be paid.
 */
final class Mending {
  private final List<Work> works;

  /**
   * One unit.
   *
   * @param part full name of the part
   * @param unit which of its units
   * @param access what it takes to get there
   * @param minutes of looking itself
   */
  record Work(String part, String unit, Access access, double minutes) {
    double minutes(Set<Access> open) {
      return minutes + (open.contains(access) ? 0 : access.minutes());
    }

    boolean shared() {
      return access != Access.REMOVED && access != Access.BENCH;
    }
  }

  Mending(List<Work> works) {
    this.works = List.copyOf(works);
  }

  List<Work> works() {
    return works;
  }

  /**
   * The order.
   *
   * @param chance of each unit
   * @param open what is already paid for
   */
  List<Integer> order(double[] chance, Set<Access> open) {
    Set<Access> paid = copy(open);
    List<Integer> left = new ArrayList<>();
    for (int i = 0; i < chance.length; i++) {
      left.add(i);
    }
    List<Integer> order = new ArrayList<>();
    while (!left.isEmpty()) {
      int best = left.get(0);
      for (int i : left) {
        if (chance[i] * works.get(best).minutes(paid) > chance[best] * works.get(i).minutes(paid)) {
          best = i;
        }
      }
      order.add(best);
      left.remove(Integer.valueOf(best));
      if (works.get(best).shared()) {
        paid.add(works.get(best).access());
      }
    }
    return order;
  }

  /** Expected minutes until the fault is found or everything has been looked at. */
  double minutes(double[] chance, Set<Access> open) {
    Set<Access> paid = copy(open);
    double left = 1;
    double sum = 0;
    for (int i : order(chance, open)) {
      sum += Math.max(0, left) * works.get(i).minutes(paid);
      left -= chance[i];
      if (works.get(i).shared()) {
        paid.add(works.get(i).access());
      }
    }
    return sum;
  }

  private static Set<Access> copy(Set<Access> open) {
    Set<Access> paid = EnumSet.noneOf(Access.class);
    paid.addAll(open);
    return paid;
  }
}
