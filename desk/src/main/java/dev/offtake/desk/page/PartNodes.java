package dev.offtake.desk.page;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.offtake.explain.Glance;
import dev.offtake.part.Leg;
import dev.offtake.part.Light;
import dev.offtake.part.Part;
import dev.offtake.part.Role;
import dev.offtake.part.Trip;
import dev.offtake.solve.Solution;
import dev.offtake.study.Notice;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The parts of a state.
 *
 * @param now the state
 * @param was the healthy one; null when nothing is broken or it has no answer
 * @param shows numbers
 * @param broken what is broken in each part, in words
 */
record PartNodes(Solution now, @Nullable Solution was, Shows shows, Map<String, String> broken) {
  /** Regimes that tell of a limit that is passed. */
  private static final Set<String> LIMITS = Set.of("over limit", "deadheaded", "relieving");

  /** Parts of the file under {@code parts}; those that a failure adds, such as a hole, apart. */
  void fill(ObjectNode root, Glance glance, @Nullable Glance before) {
    ArrayNode parts = root.putArray("parts");
    int own = was == null ? now.network().parts().size() : was.network().parts().size();
    for (int i = 0; i < own; i++) {
      part(parts.addObject(), i, glance.acts().get(i), before == null ? null : act(before, i));
    }
    ArrayNode added = own < now.network().parts().size() ? root.putArray("added") : null;
    for (int i = own; added != null && i < now.network().parts().size(); i++) {
      ObjectNode node = added.addObject();
      node.put("name", now.network().parts().get(i).name());
      part(node, i, glance.acts().get(i), null);
    }
  }

  private static Glance.@Nullable Act act(Glance glance, int part) {
    return part < glance.acts().size() ? glance.acts().get(part) : null;
  }

  private void part(ObjectNode node, int number, Glance.Act act, Glance.@Nullable Act before) {
    Part part = now.network().parts().get(number);
    node.put("regime", act.regime()).put("word", act.word()).put("why", act.why());
    int opening = part.observables().indexOf("opening");
    if (opening >= 0) {
      node.put("open", now.view(number, shows.style()).observed(opening));
    }
    flows(node, number, part);
    if (isShort(act.regime()) && part.role() == Role.USER) {
      node.put("short", act.why());
    }
    if (part instanceof Light) {
      node.put("lit", act.regime().equals("on"));
    }
    if (part instanceof Trip) {
      node.put("tripped", act.regime().equals("tripped"));
    }
    if (LIMITS.contains(act.regime())) {
      node.put("limit", act.word() + ": " + act.why());
    }
    if (broken.containsKey(part.name())) {
      node.put("broken", broken.get(part.name()));
    }
    if (before != null) {
      PointNodes.differs(node, "was", act.word(), before.word());
    }
  }

  private void flows(ObjectNode node, int number, Part part) {
    if (part.legs().isEmpty()) {
      return;
    }
    ArrayNode flows = node.putArray("flow");
    for (int leg = 0; leg < part.legs().size(); leg++) {
      flows.add(now.flow(number, leg));
    }
    String says = shows.flow(now.flow(number, 0));
    node.put("says", says);
    if (was != null && number < was.network().parts().size() && same(was, number, part)) {
      PointNodes.differs(node, "flowWas", says, shows.flow(was.flow(number, 0)));
    }
  }

  private static boolean same(Solution other, int number, Part part) {
    for (Leg leg : part.legs()) {
      if (!other.network().parts().get(number).legs().contains(leg)) {
        return false;
      }
    }
    return true;
  }

  /** Whether a user in such a regime has less than it needs. */
  static boolean isShort(String regime) {
    return Notice.isShort(regime);
  }
}
