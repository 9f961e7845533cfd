package dev.offtake.system;

import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Stated;
import dev.offtake.quantity.Units;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Asks whether a source hides a second value: in {@code 32 psig; R2 against 47 psig} all that
 * follows the semicolon is the source, and the 47 psig would be lost without a word.
 *
 * <p>A number with a unit of the same family counts (any pressure beside any pressure); a number
 * that a word such as page or figure leads does not.
 */
final class SecondValue {
  private static final Pattern AMOUNT =
      Pattern.compile("(?<![\\w.,-])[-+]?[0-9][0-9,]*(?:\\.[0-9]+)? *([\\p{L}%°\"][\\w/°²³%()]*)");

  /** Words whose number is a place in a paper and no amount. */
  private static final Pattern PLACE =
      Pattern.compile(
          "(?i).*\\b(?:p|pp|page|ch|chapter|fig|figure|table|sheet|note|item|line|rev|revision"
              + "|record|step|para|section|no|issue|volume|vol|run|test)\\.? *");

  /** A match says which value its own replaces. */
  private static final Pattern REPLACED = Pattern.compile("^(matched to .*)\\(was [^()]*\\)$");

  /** {@code 4 in the} is no length. */
  private static final Pattern WORD_FOLLOWS = Pattern.compile(" +\\p{L}.*");

  private static final Set<Dimension> PRESSURES =
      Set.of(
          Dimension.GAUGE_PRESSURE,
          Dimension.ABSOLUTE_PRESSURE,
          Dimension.PRESSURE,
          Dimension.PRESSURE_DIFFERENCE);

  private static final Set<Dimension> TEMPERATURES =
      Set.of(Dimension.TEMPERATURE, Dimension.TEMPERATURE_DIFFERENCE);

  private SecondValue() {}

  static void ask(String key, Stated stated, Item at, Problems doubts) {
    String source = REPLACED.matcher(stated.source()).replaceAll("$1");
    Matcher amount = AMOUNT.matcher(source);
    while (amount.find()) {
      boolean place = PLACE.matcher(source.substring(0, amount.start())).matches();
      if (!place && measures(amount.group(1), stated.dimension(), source, amount.end())) {
        String second = amount.group().strip();
        String wrong =
            "`%s` states %s, and its source \"%s\" states %s, which is not read"
                .formatted(key, stated.text(), source, second);
        String mend =
            "Write a line for each value, `- %s; its source` and `- %s; its source`, or keep values"
                + " out of sources";
        doubts.add(at, wrong, mend.formatted(stated.text(), second));
        return;
      }
    }
  }

  private static boolean measures(String unit, Dimension of, String source, int end) {
    boolean word = unit.equals("in") && WORD_FOLLOWS.matcher(source.substring(end)).matches();
    return !word && family(of).stream().anyMatch(d -> Units.find(unit, d).isPresent());
  }

  private static Set<Dimension> family(Dimension of) {
    return PRESSURES.contains(of)
        ? PRESSURES
        : TEMPERATURES.contains(of) ? TEMPERATURES : Set.of(of);
  }
}
