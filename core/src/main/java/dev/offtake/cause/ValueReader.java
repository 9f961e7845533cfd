package dev.offtake.cause;

import dev.offtake.air.Day;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.QuantityReader;
import dev.offtake.quantity.Stated;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Reads what was read.
 *
 * <pre>
 *   needle = number | "low" | "normal" | "high" | "swinging" [range] | "pegged" ["high" | "low"]
 *          | [difference] ( "below" | "above" ) other | "same as" other
 *   light  = "on" | "off" | "lit"
 *   skin   = "warm" | "cold" | temperature
 *   any    = "not read" | nothing at all
 * </pre>
 *
 * Positions and engine gauges have readers of their own. A number without a unit has the unit of
 * the reading before it on the same gauge.
 */
final class ValueReader {
  private static final Pattern SWINGING = Pattern.compile("(?i)swinging\\b(?: between)?\\s*(.*)");
  private static final Pattern PEGGED = Pattern.compile("(?i)pegged(?:\\s+(high|low))?");
  private static final Pattern BARE =
      Pattern.compile("[-+]?[0-9.]+(\\s*(\\.\\.|to)\\s*[-+]?[0-9.]+)?");
  private static final Pattern UNIT =
      Pattern.compile("[-+0-9.,\\s]+(?:to\\s+[-+0-9.,\\s]+)?([^0-9\\s].*)");
  private static final List<String> WORDS = List.of("low", "normal", "high");
  private static final List<String> LIGHT = List.of("on", "off", "lit");

  private final Comparison comparison;
  private final Movement movement;
  private final Map<String, String> units = new HashMap<>();

  ValueReader(Comparison comparison, Movement movement) {
    this.comparison = comparison;
    this.movement = movement;
  }

  /** Whether words say that nobody looked. */
  static boolean notRead(String text) {
    return text.isEmpty() || text.equals("-") || text.equalsIgnoreCase("not read");
  }

  /**
   * Reads a value.
   *
   * @param about what it is a value of
   * @param text as written
   * @param day air outside
   * @param with test gauge; empty for the system's own
   * @throws QuantityProblem when it is none, or cannot be
   */
  Value read(About about, String text, Day day, Optional<UsedGauge> with) throws QuantityProblem {
    if (notRead(text)) {
      return new Value.NotRead();
    }
    if (about instanceof About.Scaled scaled) {
      return scaled(scaled, text, day, with);
    } else if (about instanceof About.Lamp lamp) {
      return lamp(lamp, text);
    } else if (about instanceof About.Position position) {
      return Positions.read(position, text);
    } else if (about instanceof About.EngineNeedle needle) {
      return movement.read(needle, text);
    }
    return skin(text);
  }

  private Value scaled(About.Scaled about, String text, Day day, Optional<UsedGauge> with)
      throws QuantityProblem {
    String word = text.toLowerCase(Locale.ROOT);
    if (WORDS.contains(word)) {
      return Value.Word.valueOf(word.toUpperCase(Locale.ROOT));
    }
    Matcher pegged = PEGGED.matcher(text);
    if (pegged.matches()) {
      return pegged(about, pegged.group(1), with);
    }
    Optional<Value> against = comparison.read(about, text);
    if (against.isPresent()) {
      return against.get();
    }
    Matcher swinging = SWINGING.matcher(text);
    String number = swinging.matches() ? swinging.group(1).strip() : text;
    if (number.isEmpty()) {
      return new Value.Swinging(Optional.empty());
    }
    Stated stated = number(about, number, with);
    Bounds.check(about, stated, day, with);
    return swinging.matches() ? new Value.Swinging(Optional.of(stated)) : new Value.Figure(stated);
  }

  private Stated number(About.Scaled about, String text, Optional<UsedGauge> with)
      throws QuantityProblem {
    if (!text.matches(".*[0-9].*")) {
      String mend = "write a number with its unit, low, normal, high, swinging, pegged or not read";
      throw new QuantityProblem("`" + text + "` is nothing that a needle shows", mend);
    }
    String key = key(about, with);
    boolean bare = BARE.matcher(text).matches();
    String full = bare ? (text + " " + units.getOrDefault(key, "")).strip() : text;
    Stated stated = QuantityReader.read(full, about.dimension());
    if (stated.unknown()) {
      throw new QuantityProblem("nobody reads `" + text + "`", "write `not read`");
    }
    Matcher unit = UNIT.matcher(full);
    if (unit.matches()) {
      units.put(key, unit.group(1));
    }
    return stated;
  }

  private static String key(About.Scaled about, Optional<UsedGauge> with) {
    String own = about instanceof About.Needle needle ? needle.gauge().name() : about.name();
    return with.map(UsedGauge::name).orElse(own) + about.temperature();
  }

  private static Value pegged(About.Scaled about, @Nullable String end, Optional<UsedGauge> with)
      throws QuantityProblem {
    boolean ends =
        with.map(gauge -> gauge.scale().isPresent())
            .orElse(
                about instanceof About.Needle needle
                    && Double.isFinite(needle.gauge().scale().high()));
    if (!ends) {
      String mend = "give the gauge its `scale`, or write high or low";
      throw new QuantityProblem("nothing says where the scale of this gauge ends", mend);
    }
    return end == null ? Value.Pegged.UNSAID : Value.Pegged.valueOf(end.toUpperCase(Locale.ROOT));
  }

  private static Value lamp(About.Lamp lamp, String text) throws QuantityProblem {
    String word = text.toLowerCase(Locale.ROOT);
    if (!LIGHT.contains(word)) {
      String mend = "write on, off or not read";
      throw new QuantityProblem("`" + lamp.name() + "` cannot be `" + text + "`", mend);
    }
    return new Value.Lit(!word.equals("off"));
  }

  private static Value skin(String text) throws QuantityProblem {
    for (Value.Felt felt : Value.Felt.values()) {
      if (felt.words().equalsIgnoreCase(text)) {
        return felt;
      }
    }
    if (!text.matches(".*[0-9].*")) {
      String mend = "write warm, cold or a temperature";
      throw new QuantityProblem("a skin cannot be `" + text + "`", mend);
    }
    return new Value.Figure(QuantityReader.read(text, Dimension.TEMPERATURE));
  }
}
