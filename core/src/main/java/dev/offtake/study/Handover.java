package dev.offtake.study;

import dev.offtake.solve.Quantity;
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

  /** Two sources that differ by less give the same, kg/s. */
  private static final double ALIKE = 1e-5;

  private static final int MOST_STEPS = 12;

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
          found.add(locate(course, groups.get(g), new Event(next, next, next, from, to), same));
        }
      }
      same = next;
    }
    return found;
  }

  /**
   * Locates a handover.
   *
   * @param rough who hands over to whom, at a speed beyond it
   * @param near a speed before it
   */
  private static Event locate(Course course, List<String> group, Event rough, double near) {
    String before = course.at(near).map(s -> leader(s, group)).orElse("");
    Predicate<Solution> over = s -> !leader(s, group).equals(before);
    Crossing.Between between = Crossing.bisect(course, over, near, rough.core());
    int gives = number(course, rough.from());
    int takes = number(course, rough.to());
    double core = meet(course, gives, takes, between);
    Quantity ahead = Quantity.flow(takes, 0).minus(Quantity.flow(gives, 0));
    Shifts shifts =
        Optional.of(ahead)
            .filter(q -> before.equals(rough.from()))
            .flatMap(q -> ReadingShifts.of(course, q, core))
            .orElseGet(() -> Crossing.bySolving(course, over, core));
    Crossing.Range range = Crossing.range(course, core, shifts);
    return new Event(range.core(), range.low(), range.high(), rough.from(), rough.to());
  }

  private static int number(Course course, String source) {
    return course.at(course.here()).map(s -> s.network().part(source)).orElse(-1);
  }

  /**
   * Where two sources give the same: by the secant through both sides, which halves the weight of a
   * side that stays (the Illinois method of Dowell and Jarratt, BIT 11, 1971).
   */
  private static double meet(Course course, int gives, int takes, Crossing.Between between) {
    double before = between.before();
    double beyond = between.beyond();
    double below = ahead(course, before, gives, takes);
    double above = ahead(course, beyond, gives, takes);
    double core = between.middle();
    int last = 0;
    for (int i = 0; i < MOST_STEPS && below < 0 && above > 0; i++) {
      core = before - below * (beyond - before) / (above - below);
      double there = ahead(course, core, gives, takes);
      if (!(Math.abs(there) > ALIKE)) {
        break;
      }
      boolean low = there < 0;
      if (low) {
        before = core;
        below = there;
        above = last < 0 ? 0.5 * above : above;
      } else {
        beyond = core;
        above = there;
        below = last > 0 ? 0.5 * below : below;
      }
      last = low ? -1 : 1;
    }
    return core;
  }

  /** By how much one source gives more than another, kg/s; NaN without an answer. */
  private static double ahead(Course course, double core, int gives, int takes) {
    return course.at(core).map(s -> s.flow(takes, 0) - s.flow(gives, 0)).orElse(Double.NaN);
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
