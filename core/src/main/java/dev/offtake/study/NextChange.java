package dev.offtake.study;

import dev.offtake.part.Conditions;
import dev.offtake.part.Doing;
import dev.offtake.quantity.Style;
import dev.offtake.solve.Settler;
import dev.offtake.solve.Setup;
import dev.offtake.solve.Solution;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The first core speed above (or below) the present one at which a part begins to do something
 * else.
 *
 * <p>The engine is moved in small strides until a regime differs, then the stride is halved until
 * the speed is known to a twentieth of a percent. Fan speed moves in proportion.
 */
public final class NextChange {
  private static final double STRIDE = 0.01;
  private static final double EXACT = 0.0005;

  private NextChange() {}

  /**
   * A change.
   *
   * @param core core speed as a fraction
   * @param parts what changes there, at least one
   */
  public record Event(double core, List<Change> parts) {
    /** Keeps its list. */
    public Event {
      parts = List.copyOf(parts);
    }
  }

  /** A part that does something else from here on. */
  public record Change(String part, Doing before, Doing after) {}

  /**
   * Looks for the next change.
   *
   * @param settler solves
   * @param setup present power and line-up
   * @param until core speed to look as far as; above or below the present one
   * @return empty when nothing changes before {@code until} or no answer is found on the way
   */
  public static Optional<Event> find(Settler settler, Setup setup, double until) {
    double here = setup.conditions().core();
    List<Doing> now = doings(settler, setup, here);
    double direction = Math.signum(until - here);
    double same = here;
    while (direction * (until - same) > 1e-9) {
      double next = same + direction * Math.min(STRIDE, Math.abs(until - same));
      List<Doing> there = doings(settler, setup, next);
      if (there.isEmpty() || now.isEmpty()) {
        return Optional.empty();
      }
      if (differ(now, there)) {
        return Optional.of(locate(settler, setup, now, same, next));
      }
      same = next;
    }
    return Optional.empty();
  }

  private static Event locate(
      Settler settler, Setup setup, List<Doing> now, double same, double other) {
    double near = same;
    double far = other;
    List<Doing> there = doings(settler, setup, far);
    while (Math.abs(far - near) > EXACT) {
      double middle = (near + far) / 2;
      List<Doing> at = doings(settler, setup, middle);
      if (!at.isEmpty() && !differ(now, at)) {
        near = middle;
      } else {
        far = middle;
        there = at.isEmpty() ? there : at;
      }
    }
    return new Event((near + far) / 2, changes(settler, now, there));
  }

  private static List<Change> changes(Settler settler, List<Doing> now, List<Doing> there) {
    List<Change> changes = new ArrayList<>();
    for (int i = 0; i < now.size(); i++) {
      if (!now.get(i).regime().equals(there.get(i).regime())) {
        String name = settler.network().parts().get(i).name();
        changes.add(new Change(name, now.get(i), there.get(i)));
      }
    }
    return changes;
  }

  private static boolean differ(List<Doing> one, List<Doing> two) {
    for (int i = 0; i < one.size(); i++) {
      if (!one.get(i).regime().equals(two.get(i).regime())) {
        return true;
      }
    }
    return false;
  }

  /** What each part does at a core speed; empty when there is no answer. */
  private static List<Doing> doings(Settler settler, Setup setup, double core) {
    Conditions c = setup.conditions();
    double fan = c.core() > 0 ? c.fan() * core / c.core() : c.fan();
    Solution solution = settler.solve(setup.at(c.withSpeeds(core, fan)));
    List<Doing> doings = new ArrayList<>();
    for (int i = 0; solution.solved() && i < settler.network().parts().size(); i++) {
      doings.add(solution.doing(i, Style.SHOP));
    }
    return doings;
  }
}
