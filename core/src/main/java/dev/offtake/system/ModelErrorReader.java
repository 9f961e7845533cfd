package dev.offtake.system;

import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.QuantityReader;
import dev.offtake.quantity.Stated;
import dev.offtake.system.Item.Entry;
import dev.offtake.system.Item.Section;
import dev.offtake.system.Item.Words;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads {@code model error: {pressure: 1.8 %, temperature: 9 degF; source}}. */
final class ModelErrorReader {
  static final String SECTION = "model error";

  private static final String PRESSURE = "pressure";
  private static final String TEMPERATURE = "temperature";

  /** Beyond which a forecast says nothing: 50 % and 200 K. */
  private static final double MOST_PRESSURE = 0.5;

  private static final double MOST_TEMPERATURE = 200;

  private final Papers papers;
  private final Problems problems;
  private String source = "";

  ModelErrorReader(Papers papers, Problems problems) {
    this.papers = papers;
    this.problems = problems;
  }

  /**
   * Reads the section.
   *
   * @param entry the section; null when the file has none
   */
  ModelError read(@Nullable Entry entry) {
    if (entry == null) {
      return ModelError.USUAL;
    }
    if (!(entry.value() instanceof Section section)) {
      String wrong = "`" + SECTION + "` needs named lines, not " + entry.value().words();
      problems.add(entry.value(), wrong, "Write `{pressure: 2 %, temperature: 9 degF; source}`");
      return ModelError.USUAL;
    }
    for (Entry line : section.entries().values()) {
      String name = line.name().text();
      List<String> known = List.of(PRESSURE, TEMPERATURE);
      if (!known.contains(name)) {
        String wrong = "`" + SECTION + "` has no line `" + name + "`";
        problems.add(line.name(), wrong, Hint.of(name, known));
      }
    }
    double pressure = value(section, PRESSURE, Dimension.SHARE, MOST_PRESSURE);
    double temperature =
        value(section, TEMPERATURE, Dimension.TEMPERATURE_DIFFERENCE, MOST_TEMPERATURE);
    return new ModelError(
            ModelError.USUAL.pressure(),
            ModelError.USUAL.temperature(),
            source,
            !Double.isNaN(pressure),
            !Double.isNaN(temperature))
        .with(pressure, temperature);
  }

  /** A value above zero; NaN when there is none. */
  private double value(Section section, String key, Dimension dimension, double most) {
    Entry entry = section.entries().get(key);
    if (entry == null) {
      return Double.NaN;
    }
    String example = dimension == Dimension.SHARE ? "`pressure: 2 %`" : "`temperature: 9 degF`";
    String text = entry.value() instanceof Words words ? words.text() : "";
    try {
      Stated stated = QuantityReader.read(text, dimension);
      if (stated.nominal() > 0 && stated.nominal() <= most) {
        papers.paper(stated.source(), entry.value());
        source = source.isEmpty() ? stated.source() : source;
        return stated.nominal();
      }
      String wrong = "No forecast is off by " + Values.withoutSource(text);
      problems.add(entry.value(), wrong, "Write a value above zero, such as " + example);
    } catch (QuantityProblem problem) {
      problems.add(entry.value(), problem.wrong(), "Write it as in " + example);
    }
    return Double.NaN;
  }
}
