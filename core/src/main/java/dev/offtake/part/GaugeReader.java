package dev.offtake.part;

import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.QuantityReader;
import dev.offtake.quantity.Stated;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Makes a gauge from what a file says; its units depend on what the gauge reads. */
final class GaugeReader {
  /** Error of a pressure gauge where nothing is said, Pa (1 psi): an assumption. */
  private static final double USUAL_PRESSURE = 6894.757;

  /** Error of a temperature gauge where nothing is said, K (10 °F): an assumption. */
  private static final double USUAL_TEMPERATURE = 10 / 1.8;

  /** Smallest error that a scale is read to, Pa or K. */
  static final double LEAST = 0.1;

  /** No needle shows more, Pa or K. */
  private static final double MOST_SHOWN = 1e8;

  /** No cabin or cell is further from vacuum, or from the air outside, than this, Pa. */
  private static final double MOST_ZERO = 2e5;

  private final Facts facts;
  private final List<Facts.Needle> needles;
  private final boolean temperature;

  GaugeReader(Facts facts) {
    this.facts = facts;
    needles = needles();
    temperature = !needles.isEmpty() && needles.get(0).reads().temperature();
  }

  Gauge gauge() {
    String relative = facts.choice("relative to");
    double plain = plain();
    double constant = difference("good to constant", Gauge.CONSTANT_SHARE * plain);
    double each = difference("good to each reading", (1 - Gauge.CONSTANT_SHARE) * plain);
    Gauge.Scale scale = scale(relative.equals("absolute"));
    double span = scale.high() - scale.low();
    double reach = Double.isFinite(span) ? Math.max(span, 2 * constant) : 100 * constant;
    double most = Math.max(reach, 10 * LEAST);
    Parameter bias =
        new Parameter("bias", 0, -constant, constant, -most, most, differences(), "gauge");
    return new Gauge(
        facts.name(),
        needles,
        scale,
        difference("step", 0),
        mark(scale),
        each,
        relative,
        facts.text("seen"),
        parameters(bias, zero(relative)));
  }

  /** Marks count from the end of the scale, else from zero in the unit of the step. */
  private double mark(Gauge.Scale scale) {
    if (Double.isFinite(scale.low())) {
      return scale.low();
    }
    if (!temperature || !facts.has("step")) {
      return 0;
    }
    try {
      String unit = facts.text("step").replaceAll("^[-+0-9.,\\s]*", "");
      return QuantityReader.read("0 " + unit, Dimension.TEMPERATURE).nominal();
    } catch (QuantityProblem problem) {
      return 0; // the step itself has been refused
    }
  }

  /**
   * In the order of {@link Gauge}: the gauge's own, those of each needle, its zero if it has one.
   */
  private List<Parameter> parameters(Parameter bias, @Nullable Parameter zero) {
    List<Parameter> all = new ArrayList<>();
    all.add(bias);
    all.add(Parameter.exactly(Gauge.CROSSED_NAME, 0, 0, 1, Dimension.NUMBER, "sender line"));
    for (Facts.Needle needle : needles) {
      all.addAll(ofNeedle(needle.mark(), bias.max()));
    }
    if (zero != null) {
      all.add(zero);
    }
    return all;
  }

  /** What can go wrong with one needle, its line or its sensor; nothing when healthy. */
  private List<Parameter> ofNeedle(String mark, double most) {
    String feeler = temperature ? "sensor" : "sender line";
    return List.of(
        Parameter.exactly(Gauge.number(mark, Gauge.OFFSET), 0, -most, most, differences(), feeler),
        Parameter.exactly(Gauge.number(mark, Gauge.LOSS), 0, 0, 1, Dimension.SHARE, feeler),
        Parameter.exactly(Gauge.number(mark, Gauge.HELD), 0, 0, 1, Dimension.NUMBER, "gauge"),
        Parameter.exactly(
            Gauge.number(mark, Gauge.HELD_AT), 0, -MOST_SHOWN, MOST_SHOWN, differences(), "gauge"));
  }

  /** The pressure of a cabin or cell; null for a gauge that counts from the air or from vacuum. */
  private @Nullable Parameter zero(String relative) {
    boolean inside = relative.equals("cabin") || relative.equals("cell");
    boolean stated = facts.has("zero at");
    if (temperature && (inside || stated)) {
      String key = inside ? "relative to" : "zero at";
      facts.problem(key, "a thermometer counts from no pressure", "Take the line out");
      return null;
    }
    if (inside && !stated) {
      facts.problem(
          "relative to",
          "nothing says what pressure the " + relative + " has",
          "Add a line such as `zero at: 11.5 psia`, or write `relative to: ambient`");
    } else if (stated && !inside) {
      facts.problem(
          "zero at",
          "only a gauge relative to a cabin or cell has a zero of its own",
          "Add `relative to: cabin` or take the line out");
    }
    if (!inside || !stated) {
      return null;
    }
    boolean gauge = facts.stated("zero at").dimension() == Dimension.GAUGE_PRESSURE;
    return facts.parameter("zero at", gauge ? -MOST_ZERO : 0, MOST_ZERO, "gauge");
  }

  private List<Facts.Needle> needles() {
    List<Facts.Needle> found = new ArrayList<>(facts.needles("needles"));
    Facts.Reading one = facts.reading("reads");
    if (one != null) {
      found.add(new Facts.Needle("", one));
    }
    if (found.isEmpty()) {
      facts.problem("reads", "the gauge reads nothing", "Write reads: duct pressure.");
    }
    if (found.stream().map(n -> n.reads().temperature()).distinct().count() > 1) {
      facts.problem(
          "needles",
          "one scale cannot show both pressures and temperatures",
          "Make two gauges of it.");
    }
    return found;
  }

  private double plain() {
    double usual = temperature ? USUAL_TEMPERATURE : USUAL_PRESSURE;
    boolean told = facts.has("good to") || facts.has("good to constant");
    if (!told) {
      facts.assume("good to", "the gauge is good to " + (temperature ? "10 degF" : "1 psi"));
    }
    return difference("good to", usual);
  }

  private Dimension differences() {
    return temperature ? Dimension.TEMPERATURE_DIFFERENCE : Dimension.PRESSURE_DIFFERENCE;
  }

  private double difference(String key, double otherwise) {
    Stated stated = read(key, differences());
    return stated == null ? otherwise : Math.max(Math.abs(stated.nominal()), stated.high());
  }

  private Gauge.Scale scale(boolean absolute) {
    Dimension pressure = absolute ? Dimension.ABSOLUTE_PRESSURE : Dimension.GAUGE_PRESSURE;
    Stated stated = read("scale", temperature ? Dimension.TEMPERATURE : pressure);
    return stated == null ? Gauge.Scale.ENDLESS : new Gauge.Scale(stated.low(), stated.high());
  }

  private @Nullable Stated read(String key, Dimension dimension) {
    if (!facts.has(key)) {
      return null;
    }
    try {
      return QuantityReader.read(facts.text(key), dimension);
    } catch (QuantityProblem problem) {
      facts.problem(key, problem.wrong(), problem.mend());
      return null;
    }
  }
}
