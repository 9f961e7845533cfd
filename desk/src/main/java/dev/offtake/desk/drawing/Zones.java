package dev.offtake.desk.drawing;

import dev.offtake.part.Leg;
import dev.offtake.part.Part;
import dev.offtake.system.BleedSystem;
import java.util.HashSet;
import java.util.Set;

/**
 * Zones: points that air only leaks into and that only open to the outside. Each is one box with
 * its leaks and openings as marks, so that they do not look like ways of the air that is meant to
 * flow.
 *
 * @param names full names
 */
record Zones(Set<String> names) {
  private static final String LEAK = "leak";

  /** Keeps its names. */
  Zones {
    names = Set.copyOf(names);
  }

  /** The zones of a system. */
  static Zones of(BleedSystem system) {
    Set<String> leakedInto = new HashSet<>();
    Set<String> others = new HashSet<>();
    for (Part part : system.parts()) {
      boolean leak = part.legs().size() == 1 && Planner.symbol(part).equals(LEAK);
      for (Leg leg : part.legs()) {
        (leak ? leakedInto : others).add(leg.to());
        if (leak || !leg.to().equals(Leg.AMBIENT)) {
          others.add(leg.from());
        }
      }
    }
    leakedInto.removeAll(others);
    leakedInto.remove(Leg.AMBIENT);
    return new Zones(leakedInto);
  }

  /** Name of the zone of a part that {@link #hangs}. */
  String of(Part part) {
    Leg leg = part.legs().get(0);
    return names.contains(leg.to()) ? leg.to() : leg.from();
  }

  /** Whether a part leaks into a zone or opens one to the outside. */
  boolean hangs(Part part) {
    return part.legs().size() == 1
        && (names.contains(part.legs().get(0).to()) || names.contains(part.legs().get(0).from()));
  }
}
