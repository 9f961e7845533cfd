package dev.offtake.cause.find;

import java.util.ArrayList;
import java.util.List;

/**
 * Causes that foretell the very same at every place, such as a valve whose linkage is bent and one
 * that opens short: what is worked out for the first of them holds for all.
 */
final class Alike {
  /** Forecasts are the same that differ by less, in their own errors or as a chance. */
  private static final double SAME = 1e-4;

  private final Weigher weigher;

  Alike(Weigher weigher) {
    this.weigher = weigher;
  }

  /**
   * For each cause the number of the first that foretells the same; its own where there is none
   * before it.
   */
  List<Integer> firsts(List<Candidate> causes) {
    List<Integer> firsts = new ArrayList<>();
    for (int i = 0; i < causes.size(); i++) {
      int first = 0;
      while (first < i && !(firsts.get(first) == first && same(causes, first, i))) {
        first++;
      }
      firsts.add(first);
    }
    return firsts;
  }

  private boolean same(List<Candidate> causes, int one, int two) {
    Course.Point[] first = points(causes.get(one));
    Course.Point[] second = points(causes.get(two));
    boolean same =
        first.length == second.length
            && causes.get(one).weighed().cause().extents()
                == causes.get(two).weighed().cause().extents();
    for (int i = 0; same && i < first.length; i++) {
      double[] here = first[i].forecast();
      double[] there = second[i].forecast();
      same = weigher.apart(here, there) < SAME && weigher.speaks(here, there) < SAME;
    }
    return same;
  }

  private static Course.Point[] points(Candidate candidate) {
    return candidate.weighed().course().points().toArray(Course.Point[]::new);
  }
}
