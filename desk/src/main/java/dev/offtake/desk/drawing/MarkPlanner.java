package dev.offtake.desk.drawing;

import dev.offtake.part.Gauge;
import dev.offtake.part.Part;
import dev.offtake.system.BleedSystem;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Hangs what only watches on what it watches. */
final class MarkPlanner {
  private final BleedSystem system;
  private final Zones zones;
  private final List<Box> boxes;
  private final Map<String, Integer> byName;
  private final Map<String, Part> watchers = new LinkedHashMap<>();

  /**
   * Starts.
   *
   * @param system to draw
   * @param zones whose leaks and openings are marks as well
   * @param boxes so far; those that are watched are replaced by ones with marks
   * @param byName numbers of the boxes by full name
   */
  MarkPlanner(BleedSystem system, Zones zones, List<Box> boxes, Map<String, Integer> byName) {
    this.system = system;
    this.zones = zones;
    this.boxes = boxes;
    this.byName = byName;
  }

  /** Hangs each; returns those that watch nothing that is drawn. */
  List<Mark> hang() {
    for (Part part : system.parts()) {
      if (part.legs().isEmpty()) {
        watchers.put(part.name(), part);
      }
    }
    Map<Integer, List<Mark>> hung = new HashMap<>();
    List<Mark> loose = new ArrayList<>();
    for (int i = 0; i < system.parts().size(); i++) {
      Part part = system.parts().get(i);
      if (!part.legs().isEmpty() && !zones.hangs(part)) {
        continue;
      }
      int faces = part instanceof Gauge gauge ? Math.max(1, gauge.needles().size()) : 1;
      for (int needle = 0; needle < faces; needle++) {
        int host = host(part, needle, 0);
        Mark mark = mark(part, i, needle, host < 0 ? null : boxes.get(host));
        (host < 0 ? loose : hung.computeIfAbsent(host, any -> new ArrayList<>())).add(mark);
      }
    }
    hung.forEach((box, marks) -> boxes.set(box, boxes.get(box).with(marks)));
    return loose;
  }

  private static Mark mark(Part part, int number, int needle, @Nullable Box host) {
    String symbol = Planner.symbol(part);
    if (host == null) {
      return new Mark(number, needle, symbol, part.name(), false);
    }
    String side = host.side();
    boolean here = !side.isEmpty() && part.name().startsWith(side + " ");
    String label = here ? Planner.label(part.name(), side) : part.name();
    return new Mark(number, needle, symbol, without(label, host.name()), !part.legs().isEmpty());
  }

  /** Without the words before the last that the host says already. */
  private static String without(String label, String host) {
    List<String> known = List.of(host.split(" ", -1));
    String rest = label;
    int space = rest.indexOf(' ');
    while (space > 0 && known.contains(rest.substring(0, space))) {
      rest = rest.substring(space + 1);
      space = rest.indexOf(' ');
    }
    return rest;
  }

  /** Number of the box that a watcher hangs on; −1 for none. A light hangs where its trip does. */
  private int host(Part watcher, int needle, int deep) {
    String holder = zones.hangs(watcher) ? zones.of(watcher) : watcher.attachedTo();
    Integer attached = byName.get(holder);
    if (attached != null) {
      return attached;
    }
    List<String> seen = watcher.looksAt();
    for (String name : watcher instanceof Gauge ? one(seen, needle) : seen) {
      Integer box = byName.get(name);
      if (box != null) {
        return box;
      }
      Part other = watchers.get(name);
      int through = other == null || deep > watchers.size() ? -1 : host(other, 0, deep + 1);
      if (through >= 0) {
        return through;
      }
    }
    return -1;
  }

  private static List<String> one(List<String> names, int which) {
    return which < names.size() ? List.of(names.get(which)) : List.of();
  }
}
