package dev.offtake.explain;

import dev.offtake.cause.find.Found;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What was found, sorted for telling.
 *
 * @param found all of it
 * @param lettered groups that show in the readings, the likeliest first: A, B, …
 * @param hidden groups that look like a sound system in these readings
 */
record FindView(Found found, List<Found.Group> lettered, List<Found.Group> hidden) {
  /** From here on a sound system, or what looks like one, is the answer. */
  private static final double MOSTLY = 0.5;

  static FindView of(Found found) {
    return new FindView(
        found,
        found.groups().stream().filter(group -> !group.asSound()).toList(),
        found.groups().stream().filter(Found.Group::asSound).toList());
  }

  /** Chance of all that hides. */
  double hides() {
    return hidden.stream().mapToDouble(Found.Group::chance).sum();
  }

  /** How many failures hide. */
  int hiding() {
    return hidden.stream().mapToInt(group -> group.members().size()).sum();
  }

  /** Whether a sound system, or what looks like one, explains the readings best. */
  boolean sound() {
    return found.nothing() + hides() >= MOSTLY;
  }

  /** Letter of a group: A to Z, then A2 and so on. */
  static String letter(int group) {
    String letter = String.valueOf((char) ('A' + group % 26));
    return group < 26 ? letter : letter + (1 + group / 26);
  }

  /** Parts of a group that carry a share of its chance, the likeliest first. */
  List<String> parts(Found.Group group, double share) {
    Map<String, Double> sums = new LinkedHashMap<>();
    for (int member : group.members()) {
      var ranked = found.ranked().get(member);
      sums.merge(FindWords.parts(ranked.cause()), ranked.chance(), Double::sum);
    }
    List<Map.Entry<String, Double>> sorted = new ArrayList<>(sums.entrySet());
    sorted.sort(Comparator.comparingDouble(entry -> -entry.getValue()));
    List<String> parts = new ArrayList<>();
    double sum = 0;
    for (Map.Entry<String, Double> entry : sorted) {
      if (sum < share * group.chance()) {
        parts.add(entry.getKey());
        sum += entry.getValue();
      }
    }
    return parts;
  }
}
