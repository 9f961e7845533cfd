package dev.offtake.solve;

import dev.offtake.network.Equations;
import dev.offtake.network.Network;
import dev.offtake.part.Conditions;
import dev.offtake.part.Parameter;
import dev.offtake.part.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Solves the finite state (commands, electrical power, trips, reliefs) around the continuous one.
 *
 * <p>All rules are asked at the solved state; where they would change a command it is changed and
 * the network solved again. When the rules are at rest, parts with memory look at the state, and
 * what they changed is solved again; the state before the first such change is kept beside the
 * answer. A set of commands that comes back is a cycle.
 *
 * <p>Belongs to one thread. Memory is assumed fresh for each answer: nothing tripped, reliefs shut,
 * power rising.
 */
public final class Settler {
  private static final int ROUNDS = 60;

  private final Network network;
  private final Equations equations;
  private final SteadySolver solver;
  private final Commands commands;
  private @Nullable Solution start;
  private List<Solution> expected = List.of();

  /** Prepares to solve a network. */
  public Settler(Network network) {
    this.network = network;
    equations = new Equations(network, Conditions.standardDay(1, 1));
    solver = new SteadySolver(equations);
    commands = new Commands(equations);
  }

  /** The network. */
  public Network network() {
    return network;
  }

  /** Forgets the last state, so that the next answer does not start from it. */
  public void forget() {
    start = null;
    expected = List.of();
    solver.forget();
  }

  /**
   * Lets the next answer start from a state, whatever was solved in between.
   *
   * @param state solved; of this network, or of one that differs only in what some parts are and in
   *     parts added at its end; of any other it is of no use and not taken
   */
  @SuppressWarnings("ReferenceEquality") // the same network, not one that happens to be alike
  public void startFrom(Solution state) {
    start = state;
    expected = List.of();
    if (state.solved() && state.network() == network) {
      state.restore(equations);
      solver.recall(equations.evaluation().variables);
    } else if (state.solved() && alike(state)) {
      prepare(state.setup().healthy());
      commands.take(state);
      solver.recall(state.snapshot().variables);
    } else {
      forget();
    }
  }

  /**
   * Says what the next answer may come to: once the commands are those of such a state, the search
   * goes on from there and not from the state before they moved, which may be far from it. Called
   * after {@link #startFrom}, which forgets it.
   *
   * @param states of this network, or of one that is alike; the first that fits is taken
   */
  public void expect(List<Solution> states) {
    expected = states;
  }

  /**
   * Whether an answer is only looked for near the state to start from; what is hard to come to is
   * then not solved.
   */
  public void nearby(boolean only) {
    solver.nearby(only);
  }

  /** Goes over to a state that was expected, if the commands are now the same. */
  private void meet(Setup setup) {
    for (Solution state : expected) {
      if (state.solved() && commands.areThose(state) && alike(state)) {
        number(state.network() == network ? state.setup() : state.setup().healthy());
        solver.recall(state.snapshot().variables);
        number(setup);
        return;
      }
    }
  }

  /** Whether a state of another network has the variables of this one. */
  private boolean alike(Solution state) {
    boolean fits =
        state.network().points().equals(network.points())
            && state.network().parts().size() <= network.parts().size()
            && state.snapshot().variables.length == equations.evaluation().variables.length;
    for (int i = 0; fits && i < state.network().parts().size(); i++) {
      fits = state.network().parts().get(i).name().equals(network.parts().get(i).name());
    }
    return fits;
  }

  /**
   * Solves with fresh memory: nothing tripped, reliefs shut, power rising.
   *
   * @param setup what is asked
   * @return the answer; look at {@link Solution#solved()}
   */
  public Solution solve(Setup setup) {
    prepare(setup);
    return settle(setup);
  }

  /**
   * Goes on from an answer to another question, as one who moves the power lever does: what had
   * tripped or lifted stays so until it resets.
   *
   * @param before an answer of this network
   * @param setup what is asked next
   * @return the answer; look at {@link Solution#solved()}
   */
  public Solution goOn(Solution before, Setup setup) {
    prepare(setup);
    commands.remember(before);
    return settle(setup);
  }

  private Solution settle(Setup setup) {
    commands.decide(new StateSituation(network, setup, null));
    List<List<Double>> seen = new ArrayList<>();
    List<String> memory = new ArrayList<>();
    @Nullable Solution before = null;
    for (int round = 0; round < ROUNDS; round++) {
      List<Double> present = commands.values();
      int earlier = seen.indexOf(present);
      if (earlier >= 0) {
        return cycle(setup, memory, before, seen.subList(earlier, seen.size()));
      }
      seen.add(present);
      if (round > 0 || (start != null && !commands.areThose(start))) {
        meet(setup);
      }
      SteadySolver.Way way = solver.solve();
      Snapshot snapshot = new Snapshot(equations, commands.because());
      if (way == SteadySolver.Way.NOT_SOLVED
          || (!decideAgain(setup, snapshot) && settled(memory))) {
        return answer(setup, snapshot, way, memory, List.of(), before);
      }
      if (before == null && !memory.isEmpty()) {
        before = answer(setup, snapshot, way, List.of(), List.of(), null);
      }
    }
    return cycle(setup, memory, before, seen.subList(seen.size() - 2, seen.size()));
  }

  private void prepare(Setup setup) {
    number(setup);
    commands.reset(setup);
  }

  /** Writes conditions and the numbers of all parts. */
  private void number(Setup setup) {
    equations.setConditions(setup.conditions());
    double[] parameters = equations.evaluation().parameters;
    for (int i = 0; i < network.parts().size(); i++) {
      List<Parameter> own = network.parts().get(i).parameters();
      for (int k = 0; k < own.size(); k++) {
        parameters[equations.firstParameter(i) + k] = own.get(k).value();
      }
    }
    for (Map.Entry<Setup.PartNumber, Double> entry : setup.changed().entrySet()) {
      int part = network.part(entry.getKey().part());
      int at = part < 0 ? -1 : equations.parameter(part, entry.getKey().parameter());
      if (at < 0) {
        throw new IllegalArgumentException("no such number: " + entry.getKey());
      }
      parameters[at] = entry.getValue();
    }
  }

  private boolean decideAgain(Setup setup, Snapshot snapshot) {
    return commands.decide(new StateSituation(network, setup, snapshot));
  }

  /** Lets parts with memory look at the state; true when none of them moved. */
  private boolean settled(List<String> memory) {
    boolean moved = false;
    for (int i = 0; i < network.parts().size(); i++) {
      if (equations.element(i).settle(equations.evaluation())) {
        moved = true;
        Part part = network.parts().get(i);
        memory.add(part.name());
      }
    }
    return !moved;
  }

  private Solution cycle(
      Setup setup, List<String> memory, @Nullable Solution before, List<List<Double>> states) {
    List<String> alternating = new ArrayList<>();
    for (int i = 1; i <= states.size(); i++) {
      List<Double> next = states.get(i % states.size());
      for (String name : commands.differing(states.get(i - 1), next)) {
        if (!alternating.contains(name)) {
          alternating.add(name);
        }
      }
    }
    if (alternating.isEmpty()) {
      alternating.add("the logic");
    }
    Snapshot last = new Snapshot(equations, commands.because());
    return answer(setup, last, SteadySolver.Way.NOT_SOLVED, memory, alternating, before);
  }

  private Solution answer(
      Setup setup,
      Snapshot snapshot,
      SteadySolver.Way way,
      List<String> memory,
      List<String> cycle,
      @Nullable Solution before) {
    solver.balance().holds();
    String resists =
        network.points().isEmpty()
            ? ""
            : network.points().get(solver.balance().worstPoint()).name();
    return new Solution(
        network,
        setup,
        snapshot,
        new Solution.Outcome(
            way,
            solver.iterations(),
            solver.balance().worstShare(),
            solver.balance().pressureError(),
            resists,
            memory,
            cycle,
            Optional.ofNullable(before)));
  }
}
