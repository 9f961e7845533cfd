package dev.offtake.measure.find;

import dev.offtake.part.Access;
import java.util.EnumSet;
import java.util.Set;

/**
 * Minutes that a repair has taken. Getting to several things the same way is paid once; a unit that
 * comes off its duct or goes to the bench is paid for each. Counted here anew, so that Offtake's
 * own expectation is not what judges it.
 */
final class Bill {
  private final Set<Access> open;
  private double minutes;

  /** Begins with what is open already. */
  Bill(Set<Access> open) {
    this.open = EnumSet.noneOf(Access.class);
    this.open.addAll(open);
  }

  /** Pays for something done. */
  void pay(Iterable<Access> accesses, double own) {
    minutes += own;
    for (Access access : accesses) {
      minutes += opening(access);
      if (access != Access.REMOVED && access != Access.BENCH) {
        open.add(access);
      }
    }
  }

  private double opening(Access access) {
    return open.contains(access) ? 0 : access.minutes();
  }

  /** What a look at a unit would add. */
  double price(Shelf.Unit unit) {
    return unit.minutes() + opening(unit.access());
  }

  /** Pays for a look at a unit. */
  void look(Shelf.Unit unit) {
    pay(Set.of(unit.access()), unit.minutes());
  }

  double minutes() {
    return minutes;
  }
}
