package dev.offtake.explain;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Names that differ in their first word only, put together: {@code left and right pack}. */
final class Together {
  private Together() {}

  /**
   * The names of things that are counted, fewer of them: {@code left and right mid check valves}.
   */
  static List<String> counted(List<String> names) {
    return of(names).stream().map(name -> names.contains(name) ? name : name + "s").toList();
  }

  /** The names, fewer of them. */
  static List<String> of(List<String> names) {
    Map<String, List<String>> sides = new LinkedHashMap<>();
    for (String name : names) {
      int blank = name.indexOf(' ');
      String rest = blank < 0 ? "" : name.substring(blank);
      String first = blank < 0 ? name : name.substring(0, blank);
      sides.computeIfAbsent(rest, key -> new ArrayList<>()).add(first);
    }
    List<String> together = new ArrayList<>();
    sides.forEach((rest, first) -> together.add(String.join(" and ", first) + rest));
    return together;
  }
}
