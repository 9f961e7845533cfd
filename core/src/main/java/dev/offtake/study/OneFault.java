package dev.offtake.study;

import dev.offtake.part.Part;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.system.BleedSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Sees what is not one fault but something else that people write in its place: several faults in a
 * row, or the position of a switch.
 */
final class OneFault {
  /** What people put between two faults; a decimal comma is none. */
  private static final Pattern BETWEEN = Pattern.compile("\\s*(?:;|,(?!\\d)|\\+|&|\\band\\b)\\s*");

  private static final Pattern POSITION_WORDS = Pattern.compile("^(?i)(?:is|at|to|in)\\s+");

  private final BleedSystem system;
  private final List<String> names = new ArrayList<>();

  OneFault(BleedSystem system) {
    this.system = system;
    for (Part part : system.parts()) {
      names.add(part.name());
      String side = Twins.sideOf(part.name(), system.sides());
      if (!side.isEmpty()) {
        names.add(Twins.withoutSide(part.name(), system.sides()));
        names.add("each side " + Twins.withoutSide(part.name(), system.sides()));
      }
    }
  }

  /**
   * Checks that a text may be one fault.
   *
   * @param text blanks are single
   * @throws QuantityProblem when it is several, or about a switch; says how each is written
   */
  void check(String text) throws QuantityProblem {
    several(text);
    Optional<String> named = names.stream().filter(name -> begins(text, name)).findFirst();
    if (named.isPresent()) {
      return;
    }
    for (Map.Entry<String, List<String>> entry : system.switches().entrySet()) {
      String full = entry.getKey();
      for (String name : List.of(full, Twins.withoutSide(full, system.sides()))) {
        if (begins(text, name)) {
          throw aSwitch(full, entry.getValue(), text.substring(name.length()).strip());
        }
      }
    }
  }

  private void several(String text) throws QuantityProblem {
    List<String> pieces = List.of(BETWEEN.split(text, -1));
    long faults = pieces.stream().filter(this::isPart).count();
    if (faults > 1 && faults == pieces.size()) {
      throw new QuantityProblem(
          "one --if says one failure, and \"" + text + "\" says " + faults,
          "write --if \"" + String.join("\" --if \"", pieces) + "\"");
    }
  }

  private boolean isPart(String text) {
    return names.stream().anyMatch(name -> begins(text, name));
  }

  private static QuantityProblem aSwitch(String name, List<String> positions, String rest) {
    String asked = POSITION_WORDS.matcher(rest).replaceFirst("");
    Optional<String> meant = positions.stream().filter(p -> p.equalsIgnoreCase(asked)).findFirst();
    String position = meant.orElse(positions.get(positions.size() - 1));
    String write = "write --set \"" + name + ": " + position + "\"";
    String others = meant.isPresent() ? "" : " (it has " + String.join(", ", positions) + ")";
    return new QuantityProblem(name + " is a switch and does not fail", write + others);
  }

  private static boolean begins(String text, String words) {
    boolean begins = text.regionMatches(true, 0, words, 0, words.length());
    return begins && (text.length() == words.length() || text.charAt(words.length()) == ' ');
  }
}
