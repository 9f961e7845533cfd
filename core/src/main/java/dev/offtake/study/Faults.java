package dev.offtake.study;

import dev.offtake.part.Mode;
import dev.offtake.part.Part;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Every fault that the parts of a system can have. */
public final class Faults {
  private Faults() {}

  /**
   * Each mode of each part, to its usual extent, in the order of the parts and of their modes.
   *
   * @param parts of the system
   * @param sides names of its sides
   */
  public static List<Fault> all(List<Part> parts, List<String> sides) {
    List<Fault> faults = new ArrayList<>();
    for (Part part : parts) {
      for (Mode mode : part.modes()) {
        if (possible(parts, sides, part, mode)) {
          faults.add(Fault.usual(part, mode));
        }
      }
    }
    return faults;
  }

  /** Whether a mode can happen in this system: one that crosses two parts needs both. */
  private static boolean possible(List<Part> parts, List<String> sides, Part part, Mode mode) {
    Mode.Rebuild rebuild = mode.rebuild();
    return rebuild == null || !rebuild.of(part, Twins.of(parts, sides, part)).isEmpty();
  }

  /**
   * The same fault on every side, where one cause may bring it everywhere at once.
   *
   * @return pairs of faults; each stands once
   */
  public static List<List<Fault>> common(List<Part> parts, List<String> sides) {
    List<List<Fault>> pairs = new ArrayList<>();
    for (Part part : parts) {
      @Nullable Part twin = Twins.of(parts, sides, part);
      boolean first = Twins.sideOf(part.name(), sides).equals(sides.isEmpty() ? "" : sides.get(0));
      if (twin == null || !first) {
        continue;
      }
      for (Mode mode : part.modes()) {
        if (mode.traits().contains(Mode.Trait.COMMON)) {
          twin.modes().stream()
              .filter(m -> m.name().equals(mode.name()))
              .findFirst()
              .ifPresent(m -> pairs.add(List.of(Fault.usual(part, mode), Fault.usual(twin, m))));
        }
      }
    }
    return pairs;
  }
}
