package dev.offtake.network;

import dev.offtake.part.Leg;
import dev.offtake.part.Part;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Points and parts joined: the immutable description from which {@link Equations} are made.
 *
 * @param points inner points in the order of their variables
 * @param parts parts in the order of the file
 */
public record Network(List<PointSpec> points, List<Part> parts) {
  /** Keeps its lists. */
  public Network {
    points = List.copyOf(points);
    parts = List.copyOf(parts);
  }

  /** Joins parts; each point that a leg names becomes an inner point with usual wall and volume. */
  public static Network of(List<? extends Part> parts) {
    Map<String, PointSpec> points = new LinkedHashMap<>();
    for (Part part : parts) {
      for (Leg leg : part.legs()) {
        addInner(points, leg.from());
        addInner(points, leg.to());
      }
    }
    return new Network(new ArrayList<>(points.values()), new ArrayList<>(parts));
  }

  private static void addInner(Map<String, PointSpec> points, String name) {
    if (!name.isEmpty() && !name.equals(Leg.AMBIENT)) {
      points.computeIfAbsent(name, PointSpec::named);
    }
  }

  /** Number of a point among {@link #points}, or −1. */
  public int point(String name) {
    for (int i = 0; i < points.size(); i++) {
      if (points.get(i).name().equals(name)) {
        return i;
      }
    }
    return -1;
  }

  /** Number of a part among {@link #parts}, or −1. */
  public int part(String name) {
    for (int i = 0; i < parts.size(); i++) {
      if (parts.get(i).name().equals(name)) {
        return i;
      }
    }
    return -1;
  }
}
