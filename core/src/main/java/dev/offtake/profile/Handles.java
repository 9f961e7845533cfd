package dev.offtake.profile;

import dev.offtake.part.Part;
import dev.offtake.part.Role;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.Hint;
import dev.offtake.system.Item.Words;
import dev.offtake.system.LineUp;
import dev.offtake.system.Problems;
import dev.offtake.system.Texts;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** What a hand can reach: switches, valves to lock, hoses of supplies. */
final class Handles {
  private static final List<String> LOCKS =
      Arrays.stream(LineUp.Lock.values()).map(LineUp.Lock::words).toList();

  private final BleedSystem system;
  private final Problems problems;

  /** What was turned to what. */
  record Turned(String what, String to) {}

  Handles(BleedSystem system, Problems problems) {
    this.system = system;
    this.problems = problems;
  }

  /** Switches and valves by full name. */
  List<String> turnable() {
    List<String> all = new ArrayList<>(system.switches().keySet());
    all.addAll(names(part -> part.role() == Role.VALVE));
    return all;
  }

  /** A switch or valve and its position; empty with a problem told. */
  Optional<Turned> turned(Words name, Words to) {
    Optional<String> what = Texts.named(name.text(), turnable());
    if (what.isEmpty()) {
      problems.add(
          name, "There is no switch or valve `" + name.text() + "`", mend(name, turnable()));
      return Optional.empty();
    }
    List<String> known = system.switches().getOrDefault(what.get(), LOCKS);
    String said = Texts.value(to.text());
    Optional<String> position = Texts.named(said, known);
    if (position.isEmpty()) {
      String cannot = said.isEmpty() ? "nothing" : "`" + said + "`";
      String wrong = "`" + what.get() + "` cannot be " + cannot;
      problems.add(to, wrong, Hint.of(said, known));
    }
    return position.map(stands -> new Turned(what.get(), stands));
  }

  /** A supply by its name; empty with a problem told. */
  Optional<String> supply(Words name) {
    return part(name, "supply", names(part -> part.kind().equals("supply")));
  }

  private Optional<String> part(Words name, String kind, List<String> known) {
    String text = Texts.value(name.text());
    Optional<String> found = Texts.named(text, known);
    if (found.isEmpty()) {
      String wrong =
          text.isEmpty() ? "No " + kind + " is named" : "There is no " + kind + " `" + text + "`";
      problems.add(name, wrong, mend(name, known));
    }
    return found;
  }

  private List<String> names(Predicate<Part> which) {
    return system.parts().stream().filter(which).map(Part::name).toList();
  }

  /** The side that is missing, else the nearest word. */
  private String mend(Words name, List<String> known) {
    for (String side : system.sides()) {
      if (Texts.named(side + " " + name.text(), known).isPresent()) {
        return "Say on which side: `" + side + " " + name.text() + "`";
      }
    }
    return Hint.of(name.text(), known);
  }
}
