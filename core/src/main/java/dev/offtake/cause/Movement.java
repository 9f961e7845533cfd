package dev.offtake.cause;

import dev.offtake.quantity.Nearest;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.QuantityReader;
import dev.offtake.quantity.Stated;
import dev.offtake.system.Texts;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads how an engine gauge moved: {@code up 12 degF when left bleed switch goes ON}. */
final class Movement {
  private static final Pattern MOVED =
      Pattern.compile("(?i)(up|down|unmoved)\\b\\s*(.*?)(?:\\s*\\bwhen\\s+(.+?)\\s+goes\\s+(.+))?");

  private final Map<String, List<String>> switches;

  Movement(Map<String, List<String>> switches) {
    this.switches = switches;
  }

  Value read(About.EngineNeedle about, String text) throws QuantityProblem {
    Matcher matcher = MOVED.matcher(text);
    if (!matcher.matches()) {
      throw new QuantityProblem(
          "`" + text + "` does not say how far `" + about.name() + "` moved",
          "the engine itself is not modelled: write `up`, `down` or `unmoved`, as in"
              + " `up 12 degF when left bleed switch goes ON`");
    }
    Value.Move move = Value.Move.valueOf(matcher.group(1).toUpperCase(Locale.ROOT));
    Optional<Stated> by = by(about, move, matcher.group(2));
    if (matcher.group(3) == null) {
      return new Value.Moved(move, by, "", "");
    }
    String control = known(matcher.group(3), switches.keySet().stream().toList(), "switch");
    List<String> positions = switches.getOrDefault(control, List.of());
    String position = known(matcher.group(4), positions, "position of " + control);
    return new Value.Moved(move, by, control, position);
  }

  private static Optional<Stated> by(About.EngineNeedle about, Value.Move move, String text)
      throws QuantityProblem {
    if (text.isEmpty()) {
      return Optional.empty();
    }
    Stated by = QuantityReader.read(text, about.dimension());
    if (move == Value.Move.UNMOVED || !(by.nominal() >= 0)) {
      throw new QuantityProblem(
          "`" + text + "` does not go with `" + move.words() + "`",
          "write up or down, then how far without a sign");
    }
    return Optional.of(by);
  }

  private static String known(String name, List<String> known, String what) throws QuantityProblem {
    Optional<String> found = Texts.named(name.strip(), known);
    if (found.isEmpty()) {
      String wrong = "there is no " + what + " `" + name.strip() + "`";
      throw new QuantityProblem(wrong, Nearest.mend(name.strip(), known));
    }
    return found.get();
  }
}
