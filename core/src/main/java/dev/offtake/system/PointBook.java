package dev.offtake.system;

import dev.offtake.part.Leg;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The points that a file names.
 *
 * <p>A point exists by being named at least twice or by being declared under {@code points:}. A
 * name on a side is the side's own point, unless only the parts outside know it.
 */
final class PointBook {
  /**
   * A place in the file that names a point; a part is joined there, or something is only read
   * there.
   */
  private record Mention(String side, String name, Item at, boolean joined) {}

  /** Names that people give to the air outside, which would else become ducts of that name. */
  private static final Set<String> OUTSIDE =
      Set.of("outside", "ambient air", "outside air", "air outside", "atmosphere", "overboard");

  private final List<Mention> mentions = new ArrayList<>();
  private final Set<String> declared;
  private final List<String> sides;
  private final Set<String> places = new LinkedHashSet<>();

  PointBook(Set<String> declared, List<String> sides) {
    this.declared = declared;
    this.sides = sides;
    places.addAll(declared);
  }

  void mention(String side, String name, Item at, boolean joined) {
    mentions.add(new Mention(side, name, at, joined));
    if (joined && !name.equals(Leg.AMBIENT)) {
      places.add(side.isEmpty() || onAnySide(name) ? name : "\n" + side + "\n" + name);
    }
  }

  /** Decides, once everything is mentioned, which of the names on a side are the side's own. */
  void settle() {
    List<String> pending = places.stream().filter(place -> place.startsWith("\n")).toList();
    places.removeIf(place -> place.startsWith("\n"));
    Set<String> outside = Set.copyOf(places);
    for (String place : pending) {
      int end = place.indexOf('\n', 1);
      String name = place.substring(end + 1);
      String own = NameBook.full(place.substring(1, end), name);
      if (outside.contains(own) || !outside.contains(name)) {
        places.add(own);
      }
    }
  }

  /** Full name of the point that a name means; also for one that does not exist. */
  String full(String side, String name) {
    if (name.equals(Leg.AMBIENT)) {
      return name;
    }
    String found = NameBook.find(side, name, places);
    return found.isEmpty() ? NameBook.full(side, name) : found;
  }

  boolean exists(String full) {
    return places.contains(full) || full.equals(Leg.AMBIENT);
  }

  Set<String> places() {
    return places;
  }

  /** Tells the names that are written once only. */
  void check(Problems problems) {
    Map<String, Integer> count = new HashMap<>();
    mentions.forEach(m -> count.merge(full(m.side(), m.name()), 1, Integer::sum));
    Set<String> told = new HashSet<>();
    for (Mention m : mentions) {
      String full = full(m.side(), m.name());
      boolean once = count.getOrDefault(full, 0) < 2;
      if (declared.contains(full) || full.equals(Leg.AMBIENT)) {
        continue;
      }
      if (OUTSIDE.contains(m.name().toLowerCase(Locale.ROOT))) {
        String wrong = "`" + m.name() + "` would be a closed space of that name";
        if (told.add(full)) {
          problems.add(m.at(), wrong, "Write `ambient` for the air outside");
        }
      } else if (once || !exists(full)) {
        tell(m, full, problems);
      }
    }
  }

  private void tell(Mention m, String full, Problems problems) {
    List<String> others =
        NameBook.asWritten(
            m.side(),
            Stream.concat(places.stream(), Stream.of(Leg.AMBIENT))
                .filter(p -> !p.equals(full))
                .toList());
    String near = Hint.nearest(m.name(), others);
    String declare = "declare it under `points:` if it is an end";
    String mend =
        near.isEmpty()
            ? "Join a second part to it, or " + declare
            : "Did you mean `" + near + "`? Else " + declare;
    String wrong =
        exists(full)
            ? "The point `" + m.name() + "` is named only here"
            : "There is no point `" + m.name() + "`";
    problems.add(m.at(), wrong, mend);
  }

  private boolean onAnySide(String name) {
    return sides.stream().anyMatch(side -> name.startsWith(side + " "));
  }
}
