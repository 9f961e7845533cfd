package dev.offtake.study;

import dev.offtake.part.Doing;
import dev.offtake.part.Leg;
import dev.offtake.part.Part;
import dev.offtake.part.Role;
import dev.offtake.quantity.Style;
import dev.offtake.solve.Solution;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * The first core speed above the present one at which a part begins to do something else.
 *
 * <p>The engine is moved in small strides until a regime differs, then the crossing is bisected.
 * What counts is what valves, users, trips and lights do, and a choke or a supply that is pushed
 * back. A needle at its stop changes nothing in the air, and the way of a trickle through an idle
 * tap or duct is no event; who feeds is told by {@link Handover}.
 */
public final class NextChange {
  private static final double STRIDE = 0.01;
  private static final String GAUGE = "gauge";

  /** Less is no air to speak of, kg/s (0.5 lb/min): an assumption. */
  private static final double SOME_AIR = 0.5 * 0.45359237 / 60;

  /** Regimes of sources and passages that count. */
  private static final Set<String> LOUD = Set.of("choked", "deadheaded");

  private NextChange() {}

  /**
   * A change.
   *
   * @param core core speed by the numbers in force, a fraction
   * @param low where the bands of the parts may put it, a fraction
   * @param high likewise
   * @param parts what changes there, at least one
   */
  public record Event(double core, double low, double high, List<Change> parts) {
    /** Keeps its list. */
    public Event {
      parts = List.copyOf(parts);
    }
  }

  /** A part that does something else from here on. */
  public record Change(String part, Doing before, Doing after) {}

  /**
   * How a search ended.
   *
   * @param event what was found
   * @param reached last core speed that was looked at, a fraction
   */
  public record Search(Optional<Event> event, double reached) {}

  /**
   * Looks for the next change.
   *
   * @param course present power and line-up
   * @param until core speed to look as far as, a fraction
   * @return without an event when nothing changes before {@code until}, or no answer is found on
   *     the way
   */
  public static Search find(Course course, double until) {
    Optional<Solution> now = course.at(course.here());
    double same = course.here();
    while (now.isPresent() && until - same > 1e-9) {
      double next = Math.min(same + STRIDE, until);
      Optional<Solution> there = course.at(next);
      if (there.isEmpty()) {
        break;
      }
      List<Integer> changed = changed(now.get(), there.get());
      if (!changed.isEmpty()) {
        return new Search(Optional.of(locate(course, now.get(), same, next)), next);
      }
      same = next;
    }
    return new Search(Optional.empty(), same);
  }

  private static Event locate(Course course, Solution now, double near, double far) {
    Crossing.Between between =
        Crossing.bisect(course, there -> !changed(now, there).isEmpty(), near, far);
    double exact = between.middle();
    Solution there =
        course
            .at(exact + Crossing.EXACT)
            .filter(s -> !changed(now, s).isEmpty())
            .or(() -> course.at(far))
            .orElse(now);
    List<Integer> changed = changed(now, there);
    List<Change> changes = new ArrayList<>();
    for (int i : changed) {
      String name = now.network().parts().get(i).name();
      changes.add(new Change(name, now.doing(i, Style.SHOP), there.doing(i, Style.SHOP)));
    }
    int first = changed.get(0);
    String before = regime(now, first);
    Predicate<Solution> happened = s -> !regime(s, first).equals(before);
    Shifts shifts =
        PictureShifts.of(course, happened, first, between.before())
            .orElseGet(() -> Crossing.bySolving(course, happened, exact));
    Crossing.Range range = Crossing.range(course, exact, shifts);
    return new Event(exact, range.low(), range.high(), changes);
  }

  private static List<Integer> changed(Solution one, Solution two) {
    List<Integer> changed = new ArrayList<>();
    List<Part> parts = one.network().parts();
    for (int i = 0; i < parts.size(); i++) {
      Part part = parts.get(i);
      boolean trickle = quiet(part.role()) && still(one, i) && still(two, i);
      if (!part.kind().equals(GAUGE) && !trickle && differ(part.role(), one, two, i)) {
        changed.add(i);
      }
    }
    return changed;
  }

  private static boolean differ(Role role, Solution one, Solution two, int part) {
    String before = regime(one, part);
    String after = regime(two, part);
    boolean told = !quiet(role) || LOUD.contains(before) || LOUD.contains(after);
    return told && !before.equals(after);
  }

  private static boolean quiet(Role role) {
    return role == Role.SOURCE || role == Role.PASSAGE;
  }

  /** Whether no air to speak of passes a part that is not pushed back either. */
  private static boolean still(Solution solution, int part) {
    List<Leg> legs = solution.network().parts().get(part).legs();
    return !regime(solution, part).equals("deadheaded")
        && (legs.isEmpty() || Math.abs(solution.flow(part, 0)) < SOME_AIR);
  }

  private static String regime(Solution solution, int part) {
    return solution.doing(part, Style.SHOP).regime();
  }
}
