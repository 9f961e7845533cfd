package dev.offtake.profile;

import dev.offtake.part.Part;
import dev.offtake.part.Role;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.QuantityReader;
import dev.offtake.stability.Lags;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.Hint;
import dev.offtake.system.Item;
import dev.offtake.system.Item.Entry;
import dev.offtake.system.Item.Section;
import dev.offtake.system.Item.Words;
import dev.offtake.system.Problems;
import dev.offtake.system.Texts;
import dev.offtake.time.Pace;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How valves move, where a profile says more than what is usual for their kind.
 *
 * @param given numbers by valve and line, SI; a frequency in Hz
 */
public record Paces(Map<String, Map<String, Double>> given) {
  static final String SECTION = "valves";
  static final String SENSE_LINE = "sense line";
  static final String SENSOR = "sensor";
  static final String SERVO = "servo";
  static final String DISC = "disc";
  static final String STROKE = "full stroke";
  static final String FRICTION = "friction";
  static final String SWINGS = "swings";
  static final String DAMPING = "damping";

  /** Lines that a valve may have. */
  static final List<String> KEYS =
      List.of(SENSE_LINE, SENSOR, SERVO, DISC, STROKE, FRICTION, SWINGS, DAMPING);

  private static final Pattern FREQUENCY = Pattern.compile("([0-9.]+)\\s*(?:Hz|times a second)");

  /** No disc swings faster, Hz. */
  private static final double FASTEST = 200;

  /** No lag is longer, s. */
  private static final double SLOWEST = 600;

  /** Keeps its map. */
  public Paces {
    given = Collections.unmodifiableMap(new LinkedHashMap<>(given));
  }

  /** Reads the section. */
  static Paces read(Section section, BleedSystem system, Problems problems) {
    Map<String, Map<String, Double>> given = new LinkedHashMap<>();
    List<String> valves =
        system.parts().stream()
            .filter(part -> part.role() == Role.VALVE || part.kind().equals("flow user"))
            .map(Part::name)
            .toList();
    for (Entry entry : section.entries().values()) {
      Words name = entry.name();
      Optional<String> valve = Texts.named(name.text(), valves);
      if (valve.isEmpty()) {
        String mend = Hint.of(name.text(), valves);
        problems.add(name, "There is no valve `" + name.text() + "`", mend);
      } else if (entry.value() instanceof Section lines) {
        given.put(valve.get(), lines(lines, problems));
      } else {
        String wrong = "`" + name.text() + "` needs named lines";
        problems.add(entry.value(), wrong, "Write `{full stroke: 3 s}`");
      }
    }
    return new Paces(given);
  }

  private static Map<String, Double> lines(Section section, Problems problems) {
    Map<String, Double> lines = new LinkedHashMap<>();
    for (Entry entry : section.entries().values()) {
      String key = entry.name().text();
      if (!KEYS.contains(key)) {
        problems.add(entry.name(), "A valve has no line `" + key + "` here", Hint.of(key, KEYS));
        continue;
      }
      Item value = entry.value();
      Words words = value instanceof Words said ? said : Texts.at(value, "");
      try {
        lines.put(key, number(key, Texts.value(words.text())));
      } catch (QuantityProblem problem) {
        problems.add(words, problem.wrong(), problem.mend());
      }
    }
    return lines;
  }

  private static double number(String key, String text) throws QuantityProblem {
    if (key.equals(SWINGS)) {
      Matcher frequency = FREQUENCY.matcher(text);
      double hertz = frequency.matches() ? Double.parseDouble(frequency.group(1)) : 0;
      return within(key, text, hertz, 0.1, FASTEST, "12 Hz");
    }
    if (key.equals(FRICTION) || key.equals(DAMPING)) {
      double share = QuantityReader.read(text, Dimension.SHARE).nominal();
      return within(key, text, share, 0, key.equals(FRICTION) ? 0.5 : 2, "5 %");
    }
    double seconds = QuantityReader.read(text, Dimension.TIME).nominal();
    return within(key, text, seconds, 1e-4, SLOWEST, "2 s");
  }

  private static double within(
      String key, String text, double value, double least, double most, String example)
      throws QuantityProblem {
    if (value >= least && value <= most) {
      return value;
    }
    throw new QuantityProblem(
        "`" + key + "` cannot be `" + text + "`", "write it as in `" + key + ": " + example + "`");
  }

  /** How a part moves: as its kind usually does, but for what the profile says. */
  public Pace of(Part part) {
    Pace usual = Pace.usual(part);
    Map<String, Double> lines = given.getOrDefault(part.name(), Map.of());
    if (lines.isEmpty()) {
      return usual;
    }
    Lags lags = usual.lags();
    Pace pace =
        usual
            .withLags(
                new Lags(
                    lines.getOrDefault(SENSE_LINE, lags.senseLine()),
                    lines.getOrDefault(SENSOR, lags.sensor()),
                    lines.getOrDefault(SERVO, lags.servo()),
                    lines.getOrDefault(DISC, lags.position())))
            .withFriction(lines.getOrDefault(FRICTION, usual.friction()));
    Double stroke = lines.get(STROKE);
    pace = stroke == null ? pace : pace.withRate(1 / stroke);
    Double swings = lines.get(SWINGS);
    double damping = lines.getOrDefault(DAMPING, usual.damping());
    return swings == null ? pace : pace.swinging(swings, damping);
  }
}
