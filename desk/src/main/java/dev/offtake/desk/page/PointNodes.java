package dev.offtake.desk.page;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.offtake.explain.Glance;
import dev.offtake.solve.Solution;
import org.jspecify.annotations.Nullable;

/**
 * The points of a state.
 *
 * @param now the state
 * @param was the healthy one; null when nothing is broken or it has no answer
 * @param shows numbers
 */
record PointNodes(Solution now, @Nullable Solution was, Shows shows) {
  void fill(ArrayNode array, Glance glance) {
    for (int i = 0; i < now.network().points().size(); i++) {
      double p = pressure(now, i);
      double t = now.temperature(i);
      String says = shows.pressure(p);
      String degrees = shows.temperature(t);
      Glance.Place place = glance.places().get(i);
      ObjectNode node = array.addObject();
      node.put("p", p).put("t", t).put("psi", Shows.number(says)).put("says", says);
      node.put("degrees", degrees).put("step", Shows.step(t)).put("fed", place.fed());
      node.put("origin", place.says());
      if (!place.source().isEmpty()) {
        node.put("from", place.source());
      }
      if (was != null && i < was.network().points().size()) {
        differs(node, "was", says, shows.pressure(pressure(was, i)));
        differs(node, "degreesWas", degrees, shows.temperature(was.temperature(i)));
      }
    }
  }

  /** Static pressure above the air outside, Pa. */
  private static double pressure(Solution solution, int point) {
    return solution.sensed(point) - solution.conditions().ambientP();
  }

  /** Puts the healthy value where it prints otherwise. */
  static void differs(ObjectNode node, String field, String now, String healthy) {
    if (!now.equals(healthy)) {
      node.put(field, healthy);
    }
  }
}
