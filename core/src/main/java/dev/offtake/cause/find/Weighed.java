package dev.offtake.cause.find;

import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * A cause set against what was read.
 *
 * @param course what it foretells
 * @param evidence natural logarithm of the density of the readings, all extents together
 * @param mass what the readings make of each place of the course; sums to one
 * @param best number of the place that agrees best
 * @param slips chance that each clue is a slip if this is the cause
 * @param fit chance that sound readings lie as far from the best place as these do, or farther
 */
record Weighed(
    Course course, double evidence, double[] mass, int best, double[] slips, double fit) {

  Cause cause() {
    return course.cause();
  }

  /** The same of another cause that foretells the same. */
  Weighed of(Cause other) {
    return new Weighed(course.of(other), evidence, mass, best, slips, fit);
  }

  Weighed withEvidence(double other) {
    return new Weighed(course, other, mass, best, slips, fit);
  }

  /** Place of the extents that agrees best. */
  double[] place() {
    return course.points().get(best).place();
  }

  /**
   * Place below which a share of the mass lies.
   *
   * @param extent which of the free extents
   * @param share 0 to 1
   */
  double quantile(int extent, double share) {
    int[] order =
        IntStream.range(0, mass.length)
            .boxed()
            .sorted(
                Comparator.comparingDouble((Integer i) -> course.points().get(i).place()[extent]))
            .mapToInt(Integer::intValue)
            .toArray();
    double sum = 0;
    for (int i : order) {
      sum += mass[i];
      if (sum >= share) {
        return course.points().get(i).place()[extent];
      }
    }
    return 1;
  }
}
