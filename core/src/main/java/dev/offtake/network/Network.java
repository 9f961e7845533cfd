package dev.offtake.network;

import dev.offtake.part.Leg;
import dev.offtake.part.Part;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * Points and parts joined: the immutable description from which {@link Equations} are made. Each is
 * itself only: two networks are never equal.
 */
public final class Network {
  private final List<PointSpec> points;
  private final List<Part> parts;
  private final Map<String, Integer> pointNumbers;
  private final Map<String, Integer> partNumbers;

  /**
   * Joins.
   *
   * @param points inner points in the order of their variables
   * @param parts parts in the order of the file
   */
  public Network(List<PointSpec> points, List<? extends Part> parts) {
    this.points = List.copyOf(points);
    this.parts = List.copyOf(parts);
    pointNumbers = numbers(this.points, PointSpec::name);
    partNumbers = numbers(this.parts, Part::name);
  }

  private static <T> Map<String, Integer> numbers(List<T> all, Function<T, String> name) {
    Map<String, Integer> numbers = new HashMap<>();
    for (int i = 0; i < all.size(); i++) {
      numbers.putIfAbsent(name.apply(all.get(i)), i);
    }
    return numbers;
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

  /** Inner points in the order of their variables. */
  public List<PointSpec> points() {
    return points;
  }

  /** Parts in the order of the file. */
  public List<Part> parts() {
    return parts;
  }

  /** Number of a point among {@link #points}, or −1. */
  public int point(String name) {
    return pointNumbers.getOrDefault(name, -1);
  }

  /** Number of a part among {@link #parts}, or −1. */
  public int part(String name) {
    return partNumbers.getOrDefault(name, -1);
  }
}
