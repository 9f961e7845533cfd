package dev.offtake.cause.find;

import dev.offtake.cause.Seen;
import dev.offtake.study.Fault;
import java.util.List;

/**
 * What inspections say of a cause. A look finds what is there nine times in ten and what is not
 * there once in twenty: assumptions, from memory.
 */
final class Inspected {
  /** That a look finds what is there. */
  static final double HIT = 0.9;

  /** That a look finds what is not there. */
  static final double FALSE_ALARM = 0.05;

  private final List<Seen> seen;

  Inspected(List<Seen> seen) {
    this.seen = List.copyOf(seen);
  }

  /** Natural logarithm of the chance of all that was seen if a cause holds. */
  double log(Cause cause) {
    double log = 0;
    for (Seen look : seen) {
      boolean there =
          cause.faults().stream().anyMatch(fault -> fault.part().name().equals(look.part()));
      log +=
          switch (look.verdict()) {
            case TO_JUDGE -> 0;
            case SOUND -> Math.log(there ? 1 - HIT : 1 - FALSE_ALARM);
            case FAULTY -> Math.log(faulty(cause, look, there));
          };
    }
    return log;
  }

  private static double faulty(Cause cause, Seen look, boolean there) {
    boolean same = cause.faults().stream().anyMatch(fault -> is(fault, look));
    // A part that has failed in another way than was seen: the look was right of the part.
    return same ? HIT : there ? HIT / 3 : FALSE_ALARM;
  }

  private static boolean is(Fault fault, Seen look) {
    return fault.part().name().equals(look.part()) && fault.mode().name().equals(look.mode());
  }
}
