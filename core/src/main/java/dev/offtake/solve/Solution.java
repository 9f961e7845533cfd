package dev.offtake.solve;

import dev.offtake.logic.Situation;
import dev.offtake.network.Equations;
import dev.offtake.network.Network;
import dev.offtake.part.Conditions;
import dev.offtake.part.Doing;
import dev.offtake.part.Part;
import dev.offtake.part.View;
import dev.offtake.quantity.Style;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A solved state: a value that can be kept, compared and sent.
 *
 * <p>Points are numbered as in the network; the arrays belong to the solution and are never handed
 * out.
 */
public final class Solution {
  private final Network network;
  private final Setup setup;
  private final Snapshot snapshot;
  private final Outcome outcome;
  private final Map<String, String> refusals;

  /** What parts do, by style and part; told once, when first asked for. */
  private final Map<Style, @Nullable Doing[]> doing = new EnumMap<>(Style.class);

  /**
   * How the state was found and what it rests on.
   *
   * @param way how the solver reached it
   * @param steps Newton steps of the last solve
   * @param imbalance largest imbalance as a share of what passes
   * @param pressureError pressure that would undo what is left of the imbalance where rounding and
   *     not the tolerance decides, Pa; 0 where the tolerance is met everywhere
   * @param resists the point that balances worst
   * @param memory what was remembered, such as {@code overheat trip tripped}
   * @param cycle the controls that alternate; empty when the logic is at rest
   * @param before the state before a trip or relief moved, when one did
   */
  public record Outcome(
      SteadySolver.Way way,
      int steps,
      double imbalance,
      double pressureError,
      String resists,
      List<String> memory,
      List<String> cycle,
      Optional<Solution> before) {
    /** Keeps its lists. */
    public Outcome {
      memory = List.copyOf(memory);
      cycle = List.copyOf(cycle);
    }
  }

  Solution(Network network, Setup setup, Snapshot snapshot, Outcome outcome) {
    this.network = network;
    this.setup = setup;
    this.snapshot = snapshot;
    this.outcome = outcome;
    for (Style style : Style.values()) {
      doing.put(style, new Doing[network.parts().size()]);
    }
    refusals = balanced() ? Collections.unmodifiableMap(objections()) : Map.of();
  }

  private Map<String, String> objections() {
    Map<String, String> found = new LinkedHashMap<>();
    for (int i = 0; i < network.parts().size(); i++) {
      String why = network.parts().get(i).refuses(view(i, Style.SHOP));
      if (!why.isEmpty()) {
        found.put(network.parts().get(i).name(), why);
      }
    }
    return found;
  }

  /** The network that was solved. */
  public Network network() {
    return network;
  }

  /** What was asked. */
  public Setup setup() {
    return setup;
  }

  /** How the state was found. */
  public Outcome outcome() {
    return outcome;
  }

  /** Whether the state is an answer: it balances, its logic is at rest, and no part refuses it. */
  public boolean solved() {
    return balanced() && refusals.isEmpty();
  }

  private boolean balanced() {
    return outcome.way() != SteadySolver.Way.NOT_SOLVED && outcome.cycle().isEmpty();
  }

  /** Parts that refuse the state although it balances, and why; see {@link Part#refuses}. */
  public Map<String, String> refusals() {
    return refusals;
  }

  /** Total pressure of an inner point, Pa absolute. */
  public double pressure(int point) {
    return snapshot.pressure[point];
  }

  /** Static pressure that a gauge feels at an inner point, Pa absolute. */
  public double sensed(int point) {
    return snapshot.sensed[point];
  }

  /** Temperature of an inner point, K. */
  public double temperature(int point) {
    return snapshot.temperature[point];
  }

  /** Flow through a leg of a part, kg/s, positive in the direction of its path. */
  public double flow(int part, int leg) {
    return snapshot.flow[part][leg];
  }

  /** Whether a leg is so nearly still that its flow is a matter of rounding. */
  public boolean still(int part, int leg) {
    return snapshot.still[part][leg];
  }

  /** A control of a part. */
  public double control(int part, int which) {
    return snapshot.control[part][which];
  }

  /** What a part is doing and why. */
  public Doing doing(int part, Style style) {
    @Nullable Doing[] told = Objects.requireNonNull(doing.get(style));
    @Nullable Doing known = told[part];
    if (known == null) {
      // Two threads may both tell it: they tell the same.
      known = network.parts().get(part).doing(view(part, style));
      told[part] = known;
    }
    return known;
  }

  /** The state as seen from one part, printed in a style. */
  public View view(int part, Style style) {
    return new PartView(network, setup.conditions(), snapshot, part, style);
  }

  /** Whether a part stands in a position, such as {@code tripped}. */
  public boolean is(String part, String position) {
    int number = network.part(part);
    if (number < 0) {
      return position.equals(setup.positions().get(part));
    }
    Part found = network.parts().get(number);
    return found.is(position, view(number, Style.SHOP));
  }

  /** What conditions may ask of this state. */
  public Situation situation() {
    return new StateSituation(network, setup, snapshot);
  }

  /** New equations of the network that stand at this state, evaluated; the caller owns them. */
  public Equations equations() {
    Equations equations = new Equations(network, setup.conditions());
    restore(equations);
    return equations;
  }

  /** Puts equations of the same network into this state and evaluates them. */
  void restore(Equations equations) {
    snapshot.restore(equations, setup.conditions());
    equations.evaluate();
  }

  /** The numbers of the state. */
  Snapshot snapshot() {
    return snapshot;
  }

  /** Conditions outside. */
  public Conditions conditions() {
    return setup.conditions();
  }
}
