package dev.offtake.explain;

import dev.offtake.network.Network;
import dev.offtake.part.Leg;
import dev.offtake.part.Part;
import dev.offtake.part.Role;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Nearest;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.Style;
import dev.offtake.solve.Quantity;
import dev.offtake.study.Column;
import dev.offtake.study.Feeders;
import dev.offtake.system.BleedSystem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a curve shows: the columns asked for, such as {@code left duct pressure, left pack flow}, or
 * those that say most.
 *
 * <p>Unasked, each side shows the pressure where its valves meet and pressure and temperature where
 * its users take their air.
 */
public final class Shown {
  private static final String OPENING = "opening";

  private final BleedSystem system;
  private final Network network;

  private Shown(BleedSystem system, Network network) {
    this.system = system;
    this.network = network;
  }

  /**
   * Reads columns.
   *
   * @param system whose points and parts are named
   * @param text names with commas between them; empty for the usual ones
   * @throws QuantityProblem when a name is not known
   */
  public static List<Column> read(BleedSystem system, String text) throws QuantityProblem {
    Shown shown = new Shown(system, system.network());
    if (text.isBlank()) {
      return shown.usual();
    }
    Map<String, Column> known = shown.known();
    List<Column> columns = new ArrayList<>();
    for (String piece : text.split(",", -1)) {
      String name = piece.strip();
      Column column = known.get(name);
      if (column == null) {
        String near = Nearest.to(name, known.keySet()).map(n -> Nearest.GUESS + n + "?").orElse("");
        throw new QuantityProblem(
            "nothing called \"" + name + "\" can be shown",
            near.isEmpty()
                ? "say a point with pressure or temperature, or a part with flow or opening, such"
                    + " as \"left duct pressure\""
                : near);
      }
      columns.add(column);
    }
    return columns;
  }

  /**
   * The same columns of another network, in which parts of the system are built differently.
   *
   * @param system whose points and parts are named
   * @param network with faults in it
   * @param columns of the healthy system
   * @throws QuantityProblem when the other network has nothing of such a name
   */
  static List<Column> same(BleedSystem system, Network network, List<Column> columns)
      throws QuantityProblem {
    Map<String, Column> known = new Shown(system, network).known();
    List<Column> same = new ArrayList<>();
    for (Column column : columns) {
      Column other = known.get(column.name());
      if (other == null) {
        throw new QuantityProblem(
            "with this fault there is no " + column.name() + " that could be shown",
            "leave it out of the columns");
      }
      same.add(other);
    }
    return same;
  }

  /** Whose feeding a curve follows: one group for each side, or one for all. */
  public static List<Feeders> feeders(BleedSystem system) {
    return feeders(system, system.network());
  }

  /** The same in a network in which parts of the system are built differently. */
  static List<Feeders> feeders(BleedSystem system, Network network) {
    List<Feeders> feeders = new ArrayList<>();
    for (String side : system.sides().isEmpty() ? List.of("") : system.sides()) {
      Feeders group = Feeders.of(network, side);
      if (!group.names().isEmpty()) {
        feeders.add(group);
      }
    }
    return feeders;
  }

  private Map<String, Column> known() {
    Map<String, Column> known = new LinkedHashMap<>();
    for (int i = 0; i < network.points().size(); i++) {
      pressure(network.points().get(i).name(), i).ifPresent(c -> known.put(c.name(), c));
      Column t = temperature(i);
      known.put(t.name(), t);
    }
    for (int i = 0; i < network.parts().size(); i++) {
      Part part = network.parts().get(i);
      if (!part.legs().isEmpty()) {
        String name = part.name() + " flow";
        known.put(name, Column.flow(name, i));
      }
      int opening = part.observables().indexOf(OPENING);
      if (opening >= 0) {
        String name = part.name() + " " + OPENING;
        int number = i;
        known.put(
            name,
            new Column(
                name,
                Dimension.SHARE,
                s -> s.view(number, Style.SHOP).observed(opening),
                Quantity.observed(number, opening)));
      }
    }
    return known;
  }

  private Optional<Column> pressure(String point, int number) {
    return number < 0
        ? Optional.empty()
        : Optional.of(Column.pressure(point + " pressure", number));
  }

  private Column temperature(int point) {
    return Column.temperature(network.points().get(point).name() + " temperature", point);
  }

  private List<Column> usual() {
    List<Column> columns = new ArrayList<>();
    List<String> sides = system.sides().isEmpty() ? List.of("") : system.sides();
    for (String side : sides.subList(0, Math.min(2, sides.size()))) {
      String manifold = most(side, Role.VALVE, true);
      String duct = most(side, Role.USER, false);
      if (!manifold.equals(duct)) {
        pressure(manifold, network.point(manifold)).ifPresent(columns::add);
      }
      if (duct.isEmpty()) {
        regulated(side, manifold, columns);
      }
      int number = network.point(duct);
      pressure(duct, number).ifPresent(columns::add);
      if (number >= 0) {
        columns.add(temperature(number));
      }
    }
    return columns;
  }

  /** Where regulators of a side lead to; shown where no user tells the place that matters. */
  private void regulated(String side, String shown, List<Column> columns) {
    network.parts().stream()
        .filter(part -> part.kind().equals("regulator"))
        .map(part -> part.legs().get(0).to())
        .filter(point -> side.isEmpty() || point.startsWith(side + " "))
        .filter(point -> !point.equals(shown))
        .distinct()
        .forEach(point -> pressure(point, network.point(point)).ifPresent(columns::add));
  }

  /** The point of a side that most parts of a role lead to, or take from; empty for none. */
  private String most(String side, Role role, boolean to) {
    Map<String, Integer> count = new LinkedHashMap<>();
    for (Part part : network.parts()) {
      for (Leg leg : part.role() == role ? part.legs() : List.<Leg>of()) {
        String point = to ? leg.to() : leg.from();
        boolean here = side.isEmpty() || point.startsWith(side + " ");
        if (here && network.point(point) >= 0) {
          count.merge(point, 1, Integer::sum);
        }
      }
    }
    String best = "";
    for (Map.Entry<String, Integer> entry : count.entrySet()) {
      best = entry.getValue() > count.getOrDefault(best, 0) ? entry.getKey() : best;
    }
    return best;
  }
}
