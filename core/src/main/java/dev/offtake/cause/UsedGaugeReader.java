package dev.offtake.cause;

import dev.offtake.part.Gauge;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.QuantityReader;
import dev.offtake.quantity.Stated;
import dev.offtake.system.Hint;
import dev.offtake.system.Item;
import dev.offtake.system.Item.Entry;
import dev.offtake.system.Item.Section;
import dev.offtake.system.Item.Words;
import dev.offtake.system.Problems;
import dev.offtake.system.Texts;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Reads a test gauge: {@code {good to: 0.5 psi, calibration due: 2027-03-01}}. Its error may come
 * in two parts as in the system file: {@code good to: {constant: 0.4 psi, each reading: 0.1 psi}}.
 */
final class UsedGaugeReader {
  static final String GOOD = "good to";
  static final String CONSTANT = "constant";
  static final String EACH = "each reading";
  static final String DUE = "calibration due";
  static final String SCALE = "scale";
  static final String STEP = "step";
  static final String SHARES = "shares the sender of";
  private static final List<String> KEYS = List.of(GOOD, DUE, SCALE, STEP, SHARES);
  private static final List<String> PARTS = List.of(CONSTANT, EACH);

  private final Gauges gauges;
  private final Problems problems;

  UsedGaugeReader(Gauges gauges, Problems problems) {
    this.gauges = gauges;
    this.problems = problems;
  }

  void read(Entry entry) {
    String name = entry.name().text();
    if (Texts.named(name, gauges.own()).isPresent()) {
      String wrong = "`" + name + "` is a gauge of the system and described in its file";
      problems.add(entry.name(), wrong, "Give the test gauge another name, or take it out");
    } else if (entry.value() instanceof Section section) {
      unknown(section, KEYS, "test gauge");
      gauges.add(gauge(name, section));
    } else {
      String wrong = "The test gauge `" + name + "` needs named lines";
      problems.add(entry.value(), wrong, "Write `{good to: 0.5 psi, calibration due: 2030-01-31}`");
    }
  }

  private void unknown(Section section, List<String> known, String what) {
    for (Entry line : section.entries().values()) {
      String key = line.name().text();
      if (!known.contains(key)) {
        String wrong = "A " + what + " has no line `" + key + "`";
        problems.add(line.name(), wrong, Hint.of(key, known));
      }
    }
  }

  private UsedGauge gauge(String name, Section lines) {
    Section parts = Section.emptyAt(lines);
    if (lines.entries().containsKey(GOOD) && item(lines, GOOD) instanceof Section section) {
      parts = section;
      unknown(parts, PARTS, "`good to`");
    }
    Stated good = difference(lines, GOOD);
    Stated constant = difference(parts, CONSTANT);
    Stated each = difference(parts, EACH);
    Stated step = difference(lines, STEP);
    Optional<Stated> scale = scale(lines);
    return new UsedGauge(
        name,
        dimension(lines, scale, good, constant, each, step),
        good == null ? size(constant) : Gauge.CONSTANT_SHARE * size(good),
        good == null ? size(each) : (1 - Gauge.CONSTANT_SHARE) * size(good),
        step == null ? 0 : size(step),
        scale,
        date(lines, DUE),
        sender(lines),
        new UsedGauge.Said(
            text(lines, GOOD), text(parts, CONSTANT), text(parts, EACH), text(lines, STEP)));
  }

  private static double size(@Nullable Stated stated) {
    return stated == null ? Double.NaN : stated.nominal();
  }

  /** What the gauge measures; all that is said of it must agree. */
  private Dimension dimension(Section lines, Optional<Stated> scale, @Nullable Stated... said) {
    Dimension found = scale.map(ends -> ofScale(ends.dimension())).orElse(Dimension.NUMBER);
    for (Stated stated : said) {
      if (stated != null && found != Dimension.NUMBER && stated.dimension() != found) {
        String wrong = "The gauge measures pressures in one line and temperatures in another";
        problems.add(lines, wrong, "Make two gauges of it");
      }
      found = stated == null ? found : stated.dimension();
    }
    return found;
  }

  private static Dimension ofScale(Dimension ends) {
    boolean hot = ends == Dimension.TEMPERATURE;
    return hot ? Dimension.TEMPERATURE_DIFFERENCE : Dimension.PRESSURE_DIFFERENCE;
  }

  private @Nullable Stated difference(Section lines, String key) {
    Stated stated =
        either(lines, key, Dimension.PRESSURE_DIFFERENCE, Dimension.TEMPERATURE_DIFFERENCE);
    if (stated != null && !(stated.low() >= 0)) {
      String wrong = "`" + key + "` cannot be `" + stated.text() + "`";
      problems.add(item(lines, key), wrong, "Write how far the gauge may be off, without a sign");
      return null;
    }
    return stated;
  }

  private Optional<Stated> scale(Section lines) {
    return Optional.ofNullable(either(lines, SCALE, Dimension.PRESSURE, Dimension.TEMPERATURE));
  }

  private @Nullable Stated either(Section lines, String key, Dimension first, Dimension second) {
    String text = text(lines, key);
    if (text.isEmpty()) {
      return null;
    }
    try {
      return QuantityReader.read(text, first);
    } catch (QuantityProblem problem) {
      try {
        return QuantityReader.read(text, second);
      } catch (QuantityProblem ignored) {
        // The first dimension is the likelier one: its refusal is told.
        problems.add(item(lines, key), problem.wrong(), problem.mend());
        return null;
      }
    }
  }

  /** A date as in 2027-03-01; empty when the section has none, or with a problem told. */
  Optional<LocalDate> date(Section lines, String key) {
    String text = text(lines, key);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(LocalDate.parse(text));
    } catch (DateTimeParseException e) {
      String wrong = "`" + text + "` is no date";
      problems.add(item(lines, key), wrong, "Write year, month and day: `2030-01-31`");
      return Optional.empty();
    }
  }

  private String sender(Section lines) {
    String text = text(lines, SHARES);
    Optional<String> known = Texts.named(text, gauges.own());
    if (!text.isEmpty() && known.isEmpty()) {
      String wrong = "The system has no gauge `" + text + "`";
      problems.add(item(lines, SHARES), wrong, Hint.of(text, gauges.own()));
    }
    return known.orElse("");
  }

  private static Item item(Section lines, String key) {
    Entry entry = lines.entries().get(key);
    return entry == null ? lines : entry.value();
  }

  private static String text(Section lines, String key) {
    return item(lines, key) instanceof Words words ? words.text() : "";
  }
}
