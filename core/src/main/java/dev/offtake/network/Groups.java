package dev.offtake.network;

import dev.offtake.part.Branch;
import java.util.List;
import java.util.Set;
import org.jgrapht.Graph;
import org.jgrapht.alg.connectivity.ConnectivityInspector;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.Pseudograph;

/** Which inner points are joined by parts, whatever these let through. */
final class Groups {
  private Groups() {}

  /** Number of the group of each inner point. */
  static int[] of(Equations equations) {
    int inner = equations.innerPoints();
    Graph<Integer, DefaultEdge> graph = new Pseudograph<>(DefaultEdge.class);
    for (int i = 0; i < inner; i++) {
      graph.addVertex(i);
    }
    for (int part = 0; part < equations.network().parts().size(); part++) {
      for (Branch branch : equations.branches(part)) {
        if (branch.from < inner && branch.to < inner) {
          graph.addEdge(branch.from, branch.to);
        }
      }
    }
    int[] groups = new int[inner];
    List<Set<Integer>> sets = new ConnectivityInspector<>(graph).connectedSets();
    for (int g = 0; g < sets.size(); g++) {
      for (int point : sets.get(g)) {
        groups[point] = g;
      }
    }
    return groups;
  }
}
