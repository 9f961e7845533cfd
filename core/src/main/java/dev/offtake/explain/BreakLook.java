package dev.offtake.explain;

import dev.offtake.part.Inspection;
import dev.offtake.part.Mode;
import dev.offtake.part.Part;
import dev.offtake.part.Role;
import dev.offtake.quantity.Style;
import dev.offtake.solve.Solution;
import dev.offtake.study.Fault;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What else to look at: what was cooked, pieces, what a person notices, how it is looked for. */
final class BreakLook {
  private final List<BreakAnswer.Look> looks = new ArrayList<>();

  private BreakLook() {}

  /**
   * What to look at.
   *
   * @param faults what is broken
   * @param powers the states at all powers
   * @param asItSits healthy states in the line-ups that the file gives the powers
   * @param style units to speak in
   */
  static List<BreakAnswer.Look> of(
      List<Fault> faults, List<AtPower> powers, List<Solution> asItSits, Style style) {
    BreakLook look = new BreakLook();
    BreakHeat.of(powers, asItSits, style).forEach(says -> look.add("hot", says));
    for (Fault fault : faults) {
      if (fault.mode().traits().contains(Mode.Trait.PIECES)) {
        look.pieces(fault, powers);
      }
    }
    Map<String, List<Fault>> alike = new LinkedHashMap<>();
    for (Fault fault : faults) {
      String key = fault.mode().name() + fault.mode().inspection().how();
      alike.computeIfAbsent(key, k -> new ArrayList<>()).add(fault);
    }
    alike.values().forEach(look::people);
    return look.looks;
  }

  private void add(String what, String says) {
    String sentence = says.substring(0, 1).toUpperCase(Locale.ROOT) + says.substring(1);
    looks.add(new BreakAnswer.Look(what, sentence.endsWith(".") ? sentence : sentence + "."));
  }

  private void pieces(Fault fault, List<AtPower> powers) {
    Map<String, List<String>> where = new LinkedHashMap<>();
    for (AtPower at : powers) {
      if (at.solved()) {
        String reached = reached(at.broken(), fault.part().name());
        where.computeIfAbsent(reached, key -> new ArrayList<>()).add(at.power());
      }
    }
    List<String> ways = new ArrayList<>();
    where.forEach(
        (parts, names) -> {
          if (!parts.isEmpty()) {
            ways.add(AtPower.words(names) + " the air carries them to " + parts);
          }
        });
    String where2 = ways.isEmpty() ? "no air carries them at any power" : String.join("; ", ways);
    add("pieces", "account for every piece of the " + fault.part().name() + ": " + where2);
  }

  /** Parts in which pieces that go with the air may lodge. */
  private static String reached(Solution solution, String part) {
    int from = solution.network().part(part);
    if (from < 0) {
      return "";
    }
    List<String> names = new ArrayList<>();
    for (int i : BreakReach.downstream(solution, from)) {
      Part reached = solution.network().parts().get(i);
      boolean into = reached.role() == Role.SOURCE;
      if (into || catches(reached)) {
        names.add(into ? "the engine at the " + reached.name() : reached.name());
      }
    }
    boolean out = names.isEmpty() && BreakReach.blowsOut(solution, from);
    return out ? "the air outside" : String.join(", ", names);
  }

  private static boolean catches(Part part) {
    return part.role() == Role.VALVE
        || part.role() == Role.USER
        || part.kind().equals("heat exchanger");
  }

  /** What is told of faults that differ in their side only. */
  private void people(List<Fault> alike) {
    Mode mode = alike.get(0).mode();
    List<String> names = alike.stream().map(Fault::name).toList();
    String name = String.join(", ", Together.of(names));
    if (!mode.noticed().isEmpty()) {
      add("noticed", name + ", what may be noticed without a gauge: " + lower(mode.noticed()));
    }
    Inspection inspection = mode.inspection();
    String tools = inspection.tools().isEmpty() ? "" : "; " + inspection.tools();
    String minutes =
        String.format(
            Locale.ROOT,
            "%s, %.0f min to get there and close up, %.0f min to look",
            inspection.access().words(),
            inspection.access().minutes(),
            inspection.minutes());
    String caution = inspection.access().caution();
    boolean told =
        looks.stream()
            .anyMatch(l -> l.what().equals("caution") && l.says().endsWith(lower(caution)));
    if (!caution.isEmpty() && !told) {
      add("caution", "First: " + lower(caution));
    }
    add("inspection", name + ": " + lower(inspection.how()) + " (" + minutes + tools + ")");
  }

  private static String lower(String text) {
    return text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1);
  }
}
