package dev.offtake.study;

import dev.offtake.part.Mode;
import dev.offtake.part.Part;
import dev.offtake.system.BleedSystem;
import java.util.ArrayList;
import java.util.List;

/** Every fault that the parts of a system can have. */
public final class Faults {
  private Faults() {}

  /** Each mode of each part, to its usual extent, in the order of the parts and of their modes. */
  public static List<Fault> all(BleedSystem system) {
    List<Fault> faults = new ArrayList<>();
    for (Part part : system.parts()) {
      for (Mode mode : system.modes(part)) {
        if (possible(system, part, mode)) {
          faults.add(Fault.usual(part, mode));
        }
      }
    }
    return faults;
  }

  /** Whether a mode can happen in this system: one that crosses two parts needs both. */
  private static boolean possible(BleedSystem system, Part part, Mode mode) {
    Mode.Rebuild rebuild = mode.rebuild();
    return rebuild == null
        || !rebuild.of(part, Twins.of(system.parts(), system.sides(), part)).isEmpty();
  }

  /**
   * The same fault on both sides, where one cause may bring it everywhere at once.
   *
   * @return pairs of faults; each stands once
   */
  public static List<List<Fault>> common(BleedSystem system) {
    List<List<Fault>> pairs = new ArrayList<>();
    for (Part part : system.parts()) {
      Part twin = Twins.of(system.parts(), system.sides(), part);
      boolean first = Twins.sideOf(part.name(), system.sides()).equals(first(system));
      if (twin != null && first) {
        for (Mode mode : system.modes(part)) {
          if (mode.traits().contains(Mode.Trait.COMMON)) {
            pairs.add(
                List.of(Fault.usual(part, mode), Fault.usual(twin, alike(system, twin, mode))));
          }
        }
      }
    }
    return pairs;
  }

  private static String first(BleedSystem system) {
    return system.sides().isEmpty() ? "" : system.sides().get(0);
  }

  private static Mode alike(BleedSystem system, Part twin, Mode mode) {
    return system.modes(twin).stream()
        .filter(m -> m.name().equals(mode.name()))
        .findFirst()
        .orElse(mode);
  }
}
