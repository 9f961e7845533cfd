package dev.offtake.cause;

import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Nearest;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.QuantityReader;
import dev.offtake.quantity.Stated;
import dev.offtake.system.Texts;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads one reading against another: {@code 7 psi below right duct pressure}, or {@code 7 psi below
 * right} for the same thing on another side.
 */
final class Comparison {
  private static final Pattern AGAINST =
      Pattern.compile("(?i)(.*?)\\s*\\b(below|above|same as)\\s+(.+)");

  private final Vocabulary vocabulary;
  private final List<String> sides;

  Comparison(Vocabulary vocabulary, List<String> sides) {
    this.vocabulary = vocabulary;
    this.sides = sides;
  }

  /** The comparison; empty when the text is none. */
  Optional<Value> read(About.Scaled about, String text) throws QuantityProblem {
    Matcher matcher = AGAINST.matcher(text);
    if (!matcher.matches()) {
      return Optional.empty();
    }
    Value.Sense sense =
        switch (matcher.group(2).toLowerCase(Locale.ROOT)) {
          case "below" -> Value.Sense.BELOW;
          case "above" -> Value.Sense.ABOVE;
          default -> Value.Sense.SAME;
        };
    About.Scaled other = other(about, matcher.group(3).strip());
    return Optional.of(new Value.Against(sense, by(about, sense, matcher.group(1)), other));
  }

  private static Optional<Stated> by(About.Scaled about, Value.Sense sense, String text)
      throws QuantityProblem {
    if (text.isEmpty()) {
      return Optional.empty();
    }
    boolean hot = about.temperature();
    Stated by =
        QuantityReader.read(
            text, hot ? Dimension.TEMPERATURE_DIFFERENCE : Dimension.PRESSURE_DIFFERENCE);
    if (sense == Value.Sense.SAME || !(by.nominal() >= 0)) {
      throw new QuantityProblem(
          "`" + text + "` does not go with `" + sense.words() + "`",
          "write how far without a sign, then below or above");
    }
    return Optional.of(by);
  }

  private About.Scaled other(About.Scaled about, String name) throws QuantityProblem {
    String full = name;
    for (String side : sides) {
      for (String own : sides) {
        if (name.equalsIgnoreCase(side) && Texts.begins(about.name(), own)) {
          full = side + about.name().substring(own.length());
        }
      }
    }
    List<About.Scaled> found =
        vocabulary.find(full).stream()
            .filter(About.Scaled.class::isInstance)
            .map(About.Scaled.class::cast)
            .filter(other -> other.temperature() == about.temperature())
            .toList();
    if (found.size() == 1 && !found.get(0).equals(about)) {
      return found.get(0);
    }
    if (found.contains(about)) {
      throw new QuantityProblem(
          "`" + about.name() + "` is compared with itself", "name the other reading");
    }
    throw new QuantityProblem(
        "there is nothing `" + full + "` to compare with",
        Nearest.to(full, vocabulary.known())
            .map(near -> Nearest.GUESS + near + "?")
            .orElse("name another gauge in full"));
  }
}
