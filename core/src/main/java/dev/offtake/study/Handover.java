package dev.offtake.study;

import dev.offtake.solve.Solution;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * The core speeds above the present one at which another source becomes the one that gives most:
 * one stage hands the users over to the next.
 */
public final class Handover {
  private static final double STRIDE = 0.01;

  /** A source that gives less than this leads nobody, kg/s. */
  private static final double TRICKLE = 1e-3;

  private Handover() {}

  /**
   * A handover.
   *
   * @param core core speed by the numbers in force, a fraction
   * @param low where the bands of the parts may put it, a fraction
   * @param high likewise
   * @param from source that gave most
   * @param to source that gives most from here on
   */
  public record Event(double core, double low, double high, String from, String to) {}

  /**
   * Looks for the first handover of each group of sources.
   *
   * @param course present power and line-up
   * @param groups full names of the sources that feed the same users, a group for each side
   * @param until core speed to look as far as, a fraction
   * @return one event for each group that hands over before {@code until}
   */
  public static List<Event> find(Course course, List<List<String>> groups, double until) {
    List<Event> found = new ArrayList<>();
    Optional<Solution> now = course.at(course.here());
    Set<Integer> done = new HashSet<>();
    double same = course.here();
    while (now.isPresent() && done.size() < groups.size() && until - same > 1e-9) {
      double next = Math.min(same + STRIDE, until);
      Optional<Solution> there = course.at(next);
      if (there.isEmpty()) {
        break;
      }
      for (int g = 0; g < groups.size(); g++) {
        String from = leader(now.get(), groups.get(g));
        String to = leader(there.get(), groups.get(g));
        boolean over = !from.isEmpty() && !to.isEmpty() && !from.equals(to);
        if (over && done.add(g)) {
          found.add(locate(course, groups.get(g), same, next));
        }
      }
      same = next;
    }
    return found;
  }

  private static Event locate(Course course, List<String> group, double near, double far) {
    String from = course.at(near).map(s -> leader(s, group)).orElse("");
    String to = course.at(far).map(s -> leader(s, group)).orElse("");
    Predicate<Solution> over = s -> !leader(s, group).equals(from);
    double core = Crossing.bisect(course, over, near, far);
    Crossing.Range range = Crossing.range(course, over, numbers(course, group), core);
    return new Event(range.core(), range.low(), range.high(), from, to);
  }

  private static int[] numbers(Course course, List<String> group) {
    return course
        .at(course.here())
        .map(s -> group.stream().mapToInt(name -> s.network().part(name)).toArray())
        .orElse(new int[0]);
  }

  /** Name of the source that gives most; empty when none gives more than a trickle. */
  private static String leader(Solution solution, List<String> group) {
    String leader = "";
    double most = TRICKLE;
    for (String source : group) {
      double gives = solution.flow(solution.network().part(source), 0);
      if (gives > most) {
        most = gives;
        leader = source;
      }
    }
    return leader;
  }
}
