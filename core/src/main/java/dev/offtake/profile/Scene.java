package dev.offtake.profile;

import dev.offtake.network.Network;
import dev.offtake.part.Conditions;
import dev.offtake.solve.Setup;
import dev.offtake.study.Broken;
import dev.offtake.study.Fault;
import dev.offtake.system.BleedSystem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** How switches, valves, hoses and parts stand while a profile goes on. */
final class Scene {
  /** Number of a supply that says whether it gives air at all. */
  private static final String COMES_ON = "comes on";

  private final Network network;
  private final List<String> sides;
  private final Map<String, String> positions;
  private final Map<String, String> locks;
  private final Set<String> removed;
  private final List<Fault> faults = new ArrayList<>();
  private final Map<Setup.PartNumber, Double> built;
  private Map<Setup.PartNumber, Double> broken = Map.of();

  /**
   * Everything as it stands at the beginning.
   *
   * @param more what is broken besides
   * @throws Broken.Contradiction when faults cannot be there together
   */
  Scene(BleedSystem system, Start start, List<Fault> more) {
    sides = system.sides();
    List<Fault> first = new ArrayList<>(start.faults());
    first.addAll(more);
    Broken begun = Broken.of(system.network(), sides, first);
    network = begun.network();
    built = begun.changed();
    positions = new LinkedHashMap<>(start.positions());
    locks = new LinkedHashMap<>(start.locks());
    removed = new LinkedHashSet<>(start.removed());
  }

  private Scene(Scene other) {
    network = other.network;
    sides = other.sides;
    positions = new LinkedHashMap<>(other.positions);
    locks = new LinkedHashMap<>(other.locks);
    removed = new LinkedHashSet<>(other.removed);
    faults.addAll(other.faults);
    built = other.built;
    broken = other.broken;
  }

  /** A scene that goes its own way from here. */
  Scene copy() {
    return new Scene(this);
  }

  /** The network, built as the faults of the beginning ask. */
  Network network() {
    return network;
  }

  /**
   * Does something; what moves the core changes nothing here.
   *
   * @throws Broken.Contradiction when a fault cannot come on top of the others
   */
  void act(Action action) {
    if (action instanceof Action.Turn turn) {
      turn(turn.what(), turn.to());
    } else if (action instanceof Action.Hose hose) {
      if (hose.connected()) {
        removed.remove(hose.supply());
      } else {
        removed.add(hose.supply());
      }
    } else if (action instanceof Action.Breaks breaks) {
      faults.addAll(breaks.faults());
      broken = Broken.of(network, sides, faults).changed();
    }
  }

  void turn(String what, String to) {
    (positions.containsKey(what) ? positions : locks).put(what, to);
  }

  /** Position of a switch. */
  String position(String control) {
    return positions.getOrDefault(control, "");
  }

  /** The question for the solver under given conditions. */
  Setup setup(Conditions conditions) {
    Map<Setup.PartNumber, Double> changed = new LinkedHashMap<>(built);
    changed.putAll(broken);
    removed.forEach(supply -> changed.put(new Setup.PartNumber(supply, COMES_ON), 0.0));
    return new Setup(conditions, positions, locks, changed);
  }
}
