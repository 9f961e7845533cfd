package dev.offtake.explain;

import dev.offtake.network.Network;
import dev.offtake.part.Leg;
import dev.offtake.part.Part;
import dev.offtake.solve.Solution;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jgrapht.Graph;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.DirectedPseudograph;
import org.jgrapht.graph.Pseudograph;
import org.jgrapht.traverse.BreadthFirstIterator;

/**
 * In which order an upset reaches the places of a network, and where the air of a place goes.
 *
 * <p>Points and parts are both vertices; the air outside joins nothing.
 */
final class BreakReach {
  private BreakReach() {}

  /** A place of a network: a point, or a part. */
  record Place(boolean point, int number) {}

  /**
   * All places, nearest first; what is not joined to the beginning comes last, in the file's order.
   *
   * @param network where
   * @param from numbers of the parts where it begins
   */
  static List<Place> order(Network network, Collection<Integer> from) {
    Graph<Place, DefaultEdge> graph = new Pseudograph<>(DefaultEdge.class);
    vertices(graph, network);
    for (int i = 0; i < network.parts().size(); i++) {
      Part part = network.parts().get(i);
      for (Leg leg : part.legs()) {
        join(graph, network, leg.from(), i);
        join(graph, network, leg.to(), i);
      }
      int host = network.part(part.attachedTo());
      if (host >= 0) {
        graph.addEdge(new Place(false, i), new Place(false, host));
      }
    }
    Set<Place> order = new LinkedHashSet<>(reached(graph, from));
    order.addAll(graph.vertexSet());
    return List.copyOf(order);
  }

  /**
   * Parts that the air of a part reaches, nearest first.
   *
   * @param solution a state
   * @param part where it begins
   */
  static List<Integer> downstream(Solution solution, int part) {
    Network network = solution.network();
    Graph<Place, DefaultEdge> graph = new DirectedPseudograph<>(DefaultEdge.class);
    vertices(graph, network);
    for (int i = 0; i < network.parts().size(); i++) {
      List<Leg> legs = network.parts().get(i).legs();
      for (int leg = 0; leg < legs.size(); leg++) {
        double flow = solution.flow(i, leg);
        if (Math.abs(flow) > Compared.FLOW) {
          Leg way = legs.get(leg);
          int from = network.point(flow > 0 ? way.from() : way.to());
          int to = network.point(flow > 0 ? way.to() : way.from());
          into(graph, from, i);
          out(graph, i, to);
        }
      }
    }
    return reached(graph, List.of(part)).stream()
        .filter(place -> !place.point() && place.number() != part)
        .map(Place::number)
        .toList();
  }

  /** Whether air goes out of a part to the air outside. */
  static boolean blowsOut(Solution solution, int part) {
    List<Leg> legs = solution.network().parts().get(part).legs();
    for (int leg = 0; leg < legs.size(); leg++) {
      boolean out = legs.get(leg).to().equals(Leg.AMBIENT);
      if (out && solution.flow(part, leg) > Compared.FLOW) {
        return true;
      }
    }
    return false;
  }

  /** Whether air flows between a point and one of others. */
  static boolean feeds(Solution solution, Set<Integer> points, int other) {
    Network network = solution.network();
    for (int i = 0; i < network.parts().size(); i++) {
      List<Leg> legs = network.parts().get(i).legs();
      for (int leg = 0; leg < legs.size(); leg++) {
        int from = network.point(legs.get(leg).from());
        int to = network.point(legs.get(leg).to());
        boolean joins =
            (from == other && points.contains(to)) || (to == other && points.contains(from));
        if (joins && Math.abs(solution.flow(i, leg)) > Compared.FLOW) {
          return true;
        }
      }
    }
    return false;
  }

  private static void vertices(Graph<Place, DefaultEdge> graph, Network network) {
    for (int i = 0; i < network.parts().size(); i++) {
      graph.addVertex(new Place(false, i));
    }
    for (int i = 0; i < network.points().size(); i++) {
      graph.addVertex(new Place(true, i));
    }
  }

  private static void join(
      Graph<Place, DefaultEdge> graph, Network network, String point, int part) {
    int number = network.point(point);
    if (number >= 0) {
      graph.addEdge(new Place(true, number), new Place(false, part));
    }
  }

  private static void into(Graph<Place, DefaultEdge> graph, int point, int part) {
    if (point >= 0) {
      graph.addEdge(new Place(true, point), new Place(false, part));
    }
  }

  private static void out(Graph<Place, DefaultEdge> graph, int part, int point) {
    if (point >= 0) {
      graph.addEdge(new Place(false, part), new Place(true, point));
    }
  }

  private static List<Place> reached(Graph<Place, DefaultEdge> graph, Collection<Integer> from) {
    List<Place> begin = from.stream().map(part -> new Place(false, part)).toList();
    List<Place> reached = new ArrayList<>();
    if (!begin.isEmpty()) {
      new BreadthFirstIterator<>(graph, begin).forEachRemaining(reached::add);
    }
    return reached;
  }
}
