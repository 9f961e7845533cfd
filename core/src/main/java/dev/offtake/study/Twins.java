package dev.offtake.study;

import dev.offtake.part.Part;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Parts that stand alike on two sides. */
public final class Twins {
  private Twins() {}

  /**
   * The same part of the other side.
   *
   * @param parts all parts
   * @param sides names of the sides
   * @param part whose twin is looked for
   * @return null where there is none, or where there are more than two sides
   */
  public static @Nullable Part of(List<Part> parts, List<String> sides, Part part) {
    String side = sideOf(part.name(), sides);
    if (side.isEmpty() || sides.size() != 2) {
      return null;
    }
    String other = sides.get(sides.indexOf(side) == 0 ? 1 : 0);
    String name = other + part.name().substring(side.length());
    return parts.stream()
        .filter(p -> p.name().equals(name) && p.kind().equals(part.kind()))
        .findFirst()
        .orElse(null);
  }

  /** The side of a full name; empty for what stands between sides or has none. */
  public static String sideOf(String name, List<String> sides) {
    return sides.stream().filter(side -> name.startsWith(side + " ")).findFirst().orElse("");
  }

  /** A full name without its side. */
  public static String withoutSide(String name, List<String> sides) {
    String side = sideOf(name, sides);
    return side.isEmpty() ? name : name.substring(side.length() + 1);
  }
}
