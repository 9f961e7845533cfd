package dev.offtake.study;

import dev.offtake.network.Network;
import dev.offtake.part.Part;
import dev.offtake.part.Role;
import dev.offtake.solve.Settler;
import dev.offtake.solve.Setup;
import dev.offtake.solve.Solution;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Goes along a sweep from state to state: each begins where the last one ended, memory included.
 *
 * <p>Belongs to one thread.
 */
final class Walk {
  /** Observable by which a tap tells how far it works outside its table. */
  private static final String BEYOND = "speed outside the table";

  /** Where it is tried again, in shares of what events are known to. */
  private static final double[] BESIDE = {0, -0.3, 0.3, -0.7, 0.7};

  private final Settler settler;
  private final Sweep sweep;
  private final List<Feeders> feeders;
  private final List<Subject> subjects;

  Walk(Settler settler, Sweep sweep, List<Feeders> feeders) {
    this.settler = settler;
    this.sweep = sweep;
    this.feeders = feeders;
    subjects = subjects(settler.network(), feeders);
  }

  private static List<Subject> subjects(Network network, List<Feeders> feeders) {
    List<Subject> subjects = new ArrayList<>();
    for (Feeders group : feeders) {
      subjects.add(new Subject.Leader(group.side(), group));
    }
    for (int i = 0; i < network.parts().size(); i++) {
      Part part = network.parts().get(i);
      boolean cools = part.kind().equals("fan tap");
      if (part.role() != Role.PASSAGE && !cools) {
        subjects.add(new Subject.Regime(part.name(), i));
      }
      if (part.observables().contains(BEYOND) && !cools) {
        subjects.add(new Subject.Table(part.name(), i, BEYOND));
      }
    }
    return List.copyOf(subjects);
  }

  Sweep sweep() {
    return sweep;
  }

  Network network() {
    return settler.network();
  }

  List<Subject> subjects() {
    return subjects;
  }

  /** The side that a name belongs to; empty for none. */
  String side(String name) {
    for (Feeders group : feeders) {
      if (name.equals(group.side()) || name.startsWith(group.side() + " ")) {
        return group.side();
      }
    }
    return "";
  }

  /** The first state, with fresh memory. */
  Step begin(double x) {
    settler.forget();
    return step(x, settler.solve(sweep.knob().at(x)));
  }

  /** The state at another value, reached from an answer. */
  Step on(Solution before, double x) {
    return step(x, solve(before, x));
  }

  /** The bare state at another value with more numbers of parts changed. */
  Optional<Solution> varied(Solution before, double x, Map<Setup.PartNumber, Double> more) {
    Setup setup = sweep.knob().at(x);
    Map<Setup.PartNumber, Double> changed = new HashMap<>(setup.changed());
    changed.putAll(more);
    Setup other = new Setup(setup.conditions(), setup.positions(), setup.locks(), changed);
    Solution solution = settler.goOn(before, other);
    return solution.solved() ? Optional.of(solution) : Optional.empty();
  }

  /**
   * The bare state at another value, reached from an answer. Where that leads nowhere it is tried
   * without the last state, and then beside the value, by less than events are known.
   */
  Solution solve(Solution before, double x) {
    Solution solution = settler.goOn(before, sweep.knob().at(x));
    for (int i = 0; i < BESIDE.length && stuck(solution); i++) {
      settler.forget();
      double beside = x + BESIDE[i] * EventFinder.EXACT * sweep.length();
      solution = settler.goOn(before, sweep.knob().at(beside));
    }
    return solution;
  }

  private static boolean stuck(Solution solution) {
    return !solution.solved()
        && solution.refusals().isEmpty()
        && solution.outcome().cycle().isEmpty();
  }

  Step step(double x, Solution solution) {
    List<String> states = new ArrayList<>();
    if (solution.solved()) {
      subjects.forEach(subject -> states.add(subject.state(solution)));
    }
    return new Step(x, solution, states);
  }
}
