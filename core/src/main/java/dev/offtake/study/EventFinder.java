package dev.offtake.study;

import dev.offtake.solve.Solution;
import java.util.ArrayList;
import java.util.List;

/**
 * Finds what happens between two neighbouring states of a walk, by bisection on what each subject
 * does; never read off the stops.
 *
 * <p>Each bisection goes on from the state before the event, so that what is remembered at it is
 * remembered in each trial. Something that begins and ends between two stops is not seen.
 */
final class EventFinder {
  /** An event is known to this share of the sweep: 0.0005 % of speed on 50 % of it. */
  static final double EXACT = 1e-5;

  /** More events between two stops than this are chatter. */
  private static final int MOST = 40;

  private final Walk walk;

  /**
   * An event and the states on its two sides.
   *
   * @param before state just before it
   * @param after state just after it
   * @param changed numbers of the subjects that changed
   */
  record Found(Step before, Step after, List<Integer> changed) {
    double x() {
      return (before.x() + after.x()) / 2;
    }
  }

  EventFinder(Walk walk) {
    this.walk = walk;
  }

  /**
   * Looks between two answers.
   *
   * @param first where the walk comes from
   * @param last where it goes to, above or below
   */
  List<Found> between(Step first, Step last) {
    List<Found> found = new ArrayList<>();
    Step here = first;
    while (found.size() < MOST && !here.states().equals(last.states())) {
      Found next = next(here, last);
      found.add(next);
      here = next.after();
    }
    return found;
  }

  private Found next(Step first, Step last) {
    List<Integer> differ = differing(first, last);
    Step before = first;
    Step after = last;
    double exact = EXACT * walk.sweep().length();
    while (Math.abs(after.x() - before.x()) > exact) {
      double middle = (before.x() + after.x()) / 2;
      Solution there = walk.solve(before.solution(), middle);
      if (!there.solved()) {
        break;
      }
      if (same(differ, first, there)) {
        before = new Step(middle, there, first.states());
      } else {
        after = walk.step(middle, there);
        differ = differing(first, after);
      }
    }
    return new Found(before, after, differ);
  }

  private boolean same(List<Integer> subjects, Step first, Solution there) {
    for (int i : subjects) {
      if (!walk.subjects().get(i).state(there).equals(first.states().get(i))) {
        return false;
      }
    }
    return true;
  }

  private static List<Integer> differing(Step one, Step two) {
    List<Integer> differ = new ArrayList<>();
    for (int i = 0; i < one.states().size(); i++) {
      if (!one.states().get(i).equals(two.states().get(i))) {
        differ.add(i);
      }
    }
    return differ;
  }

  /** What changed, in words. */
  List<Curve.Change> changes(Found found) {
    List<Curve.Change> changes = new ArrayList<>();
    for (int i : found.changed()) {
      Subject subject = walk.subjects().get(i);
      String why = why(subject, found.after().solution());
      changes.add(
          new Curve.Change(
              subject.what(),
              subject.name(),
              found.before().states().get(i),
              found.after().states().get(i),
              why));
    }
    return changes;
  }

  /**
   * The last answer before a stretch without one, as near to its edge as events are known.
   *
   * @param answered an answer
   * @param none a neighbour without one
   */
  Step edge(Step answered, Step none) {
    Step good = answered;
    double bad = none.x();
    double exact = EXACT * walk.sweep().length();
    while (Math.abs(bad - good.x()) > exact) {
      double middle = (good.x() + bad) / 2;
      Solution there = walk.solve(good.solution(), middle);
      if (there.solved()) {
        good = walk.step(middle, there);
      } else {
        bad = middle;
      }
    }
    return good;
  }

  /** The inequality behind the state that a subject is in; empty where it has no word for it. */
  private static String why(Subject subject, Solution solution) {
    return subject instanceof Subject.Regime regime ? regime.doing(solution).why() : "";
  }
}
