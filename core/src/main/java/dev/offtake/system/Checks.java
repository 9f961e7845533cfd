package dev.offtake.system;

import dev.offtake.logic.Condition;
import dev.offtake.part.Control;
import dev.offtake.part.Leg;
import dev.offtake.part.Part;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What no single part can see: parts that can never carry air, conditions that go round in a
 * circle.
 */
final class Checks {
  private Checks() {}

  static void all(Draft draft, List<Part> parts, Problems problems) {
    if (problems.none()) {
      neverFlows(draft, parts, problems);
      circles(draft, parts, problems);
    }
  }

  /** Tells the parts that no source of air or outside can reach from either end. */
  private static void neverFlows(Draft draft, List<Part> parts, Problems problems) {
    Map<String, Set<String>> joined = new HashMap<>();
    for (Part part : parts) {
      for (Leg leg : part.legs()) {
        String from = leg.fromSource() ? Leg.AMBIENT : leg.from();
        joined.computeIfAbsent(from, p -> new HashSet<>()).add(leg.to());
        joined.computeIfAbsent(leg.to(), p -> new HashSet<>()).add(from);
      }
    }
    Set<String> reached = reached(joined);
    for (Part part : parts) {
      for (Leg leg : part.legs()) {
        if (!reached.contains(leg.to())) {
          String wrong = "No air can ever reach `" + part.name() + "`";
          String mend = "Join its points to a tap, a supply or `ambient`";
          PartDraft at = draft.parts.get(part.name());
          problems.add(at == null ? draftless(draft) : at.at(), wrong, mend);
        }
      }
    }
  }

  private static Item draftless(Draft draft) {
    return draft.parts.values().iterator().next().at();
  }

  private static Set<String> reached(Map<String, Set<String>> joined) {
    Set<String> reached = new HashSet<>(Set.of(Leg.AMBIENT));
    List<String> open = new ArrayList<>(reached);
    while (!open.isEmpty()) {
      for (String next : joined.getOrDefault(open.remove(open.size() - 1), Set.of())) {
        if (reached.add(next)) {
          open.add(next);
        }
      }
    }
    return reached;
  }

  /** Tells a circle of conditions in which each part waits for the next. */
  private static void circles(Draft draft, List<Part> parts, Problems problems) {
    Map<String, Set<String>> asks = new LinkedHashMap<>();
    for (Part part : parts) {
      Set<String> names = new LinkedHashSet<>();
      for (Control control : part.controls()) {
        for (Control.Rule rule : control.rules()) {
          Condition when = rule.when();
          names.addAll(when == null ? Set.of() : when.names());
        }
      }
      asks.put(part.name(), names);
    }
    for (String part : asks.keySet()) {
      List<String> circle = circle(part, part, asks, new LinkedHashSet<>());
      if (!circle.isEmpty()) {
        String way = String.join(" -> ", circle) + " -> " + part;
        PartDraft at = draft.parts.get(part);
        String mend = "Let one of them depend on a switch or a trip instead";
        problems.add(at == null ? draftless(draft) : at.at(), "Conditions go round: " + way, mend);
        return;
      }
    }
  }

  private static List<String> circle(
      String start, String now, Map<String, Set<String>> asks, Set<String> way) {
    way.add(now);
    for (String next : asks.getOrDefault(now, Set.of())) {
      if (next.equals(start)) {
        return List.copyOf(way);
      }
      if (asks.containsKey(next) && !way.contains(next)) {
        List<String> found = circle(start, next, asks, way);
        if (!found.isEmpty()) {
          return found;
        }
      }
    }
    way.remove(now);
    return List.of();
  }
}
