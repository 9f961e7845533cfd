package dev.offtake.explain;

import dev.offtake.cause.About;
import dev.offtake.cause.Reading;
import dev.offtake.cause.Value;
import dev.offtake.cause.find.Found;
import dev.offtake.part.Gauge;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Stated;
import dev.offtake.quantity.Style;
import dev.offtake.system.ModelError;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A reading and what causes foretell of it, no finer than the gauge. */
final class FindValue {
  /** Less a damping ratio: above it a needle is said to swing. */
  private static final double SWINGS = -0.1;

  /** Marks of a gauge that nobody described, Pa (1 psi) and K (1 °F): common practice. */
  private static final double MARK = 6894.757293168361;

  private static final double HOT_MARK = 1 / 1.8;

  /** A hand feels a duct to be warm when it is so much warmer than the air, K. */
  private static final double FELT = 30;

  /** Forecasts that lie so many standard deviations apart are parted by a reading. */
  private static final double PARTED = 2;

  private static final Pattern NUMBER = Pattern.compile("([-+]?[0-9.]+)\\s*(.*)");

  private final Found.Look look;
  private final String trip;
  private final Style style;

  /**
   * Prepares.
   *
   * @param look what was compared
   * @param trip the trip that its occasion speaks of; empty for none
   */
  FindValue(Found.Look look, String trip, Style style) {
    this.look = look;
    this.trip = trip;
    this.style = style;
  }

  private Reading reading() {
    return look.reading().orElseThrow();
  }

  /** What was read. */
  String name() {
    if (look.reading().isEmpty()) {
      return trip.isEmpty() ? "a trip" : trip;
    }
    if (reading().value() instanceof Value.AsUsual) {
      return "could not duplicate";
    }
    String name = reading().about().name();
    return reading().value() instanceof Value.Against against
        ? name + " against " + against.other().name()
        : name;
  }

  /** Unit of its numbers; empty for words. */
  String unit() {
    return words() ? "" : style.unit(dimension());
  }

  /** Whether it only is or is not. */
  private boolean words() {
    return look.reading().isEmpty()
        || swings()
        || reading().value() instanceof Value.AsUsual
        || reading().value() instanceof Value.Lit
        || reading().value() instanceof Value.Stands
        || reading().value() instanceof Value.Felt;
  }

  /** Whether it was only said that a needle swings. */
  private boolean swings() {
    return reading().value() instanceof Value.Swinging swinging && swinging.between().isEmpty();
  }

  private Dimension dimension() {
    Value value = reading().value();
    if (value instanceof Value.Against) {
      return hot() ? Dimension.TEMPERATURE_DIFFERENCE : Dimension.PRESSURE_DIFFERENCE;
    }
    if (value instanceof Value.Figure figure) {
      return figure.stated().dimension();
    }
    if (reading().about() instanceof About.EngineNeedle engine) {
      return engine.dimension();
    }
    if (reading().about() instanceof About.Needle needle && reading().with().isEmpty()) {
      return needle.gauge().dimension();
    }
    return hot() ? Dimension.TEMPERATURE : Dimension.GAUGE_PRESSURE;
  }

  private boolean hot() {
    return reading().about() instanceof About.Skin
        || (reading().about() instanceof About.Scaled scaled && scaled.temperature());
  }

  private double mark() {
    double step =
        reading().with().isPresent()
            ? reading().with().get().step()
            : reading().about() instanceof About.Needle needle ? needle.gauge().step() : 0;
    return step > 0 ? step : hot() ? HOT_MARK : MARK;
  }

  /** What the person read. */
  String read() {
    if (look.reading().isEmpty()) {
      return "tripped";
    }
    Value value = reading().value();
    if (value instanceof Value.Figure figure) {
      return typed(figure.stated());
    }
    if (value instanceof Value.Swinging swinging && swinging.between().isPresent()) {
      return typed(swinging.between().get());
    }
    if (value instanceof Value.Against against) {
      String far = against.by().map(by -> typed(by) + " ").orElse("");
      return far + (against.sense() == Value.Sense.SAME ? "same" : sense(against.sense()));
    }
    if (value instanceof Value.Moved moved) {
      String[] words = moved.words().split(" when ", -1);
      return words[0];
    }
    return value instanceof Value.Lit lit ? onOrOff(lit.on()) : value.words();
  }

  private static String sense(Value.Sense sense) {
    return sense == Value.Sense.BELOW ? "below" : "above";
  }

  /** As it was typed where that is in the unit of the column, else converted. */
  private String typed(Stated stated) {
    String unit = style.unit(stated.dimension());
    Matcher typed = NUMBER.matcher(stated.text());
    boolean plain = typed.matches() && typed.group(2).equals(unit);
    if (plain) {
      return typed.group(1);
    }
    boolean range = stated.high() - stated.low() > mark();
    return range
        ? number(stated.low(), stated.dimension())
            + ".."
            + number(stated.high(), stated.dimension())
        : number(stated.nominal(), stated.dimension());
  }

  /** What a state shows there; the value is that of the search. */
  String foretold(double value) {
    if (Double.isNaN(value)) {
      return "-";
    }
    if (look.reading().isEmpty()) {
      return value > 1 ? "trips" : value < -1 ? "no trip" : "may trip";
    }
    Value said = reading().value();
    if (said instanceof Value.Lit) {
      return onOrOff(value > 0.5);
    }
    if (said instanceof Value.AsUsual) {
      return value < 1 ? said.words() : "off";
    }
    if (swings()) {
      return value > SWINGS ? said.words() : "steady";
    }
    if (said instanceof Value.Felt) {
      return (value > FELT ? Value.Felt.WARM : Value.Felt.COLD).words();
    }
    if (said instanceof Value.Stands stands) {
      return stands(stands, value);
    }
    if (said instanceof Value.Against) {
      String far = number(Math.abs(value), dimension());
      return far.equals("0") ? "same" : far + (value < 0 ? " below" : " above");
    }
    if (said instanceof Value.Moved) {
      String far = number(Math.abs(value), dimension());
      return far.equals("0") ? "unmoved" : (value < 0 ? "down " : "up ") + far;
    }
    return onScale(value);
  }

  private static String stands(Value.Stands stands, double value) {
    if (!Double.isNaN(stands.open()) || stands.words().equals("part open")) {
      return Math.round(100 * value) + " % open";
    }
    return value > 0.5 ? stands.words() : "no";
  }

  private static String onOrOff(boolean on) {
    return on ? "ON" : "off";
  }

  private String onScale(double value) {
    if (reading().with().isEmpty() && reading().about() instanceof About.Needle needle) {
      Gauge.Scale scale = needle.gauge().scale();
      if (value > scale.high()) {
        return ">" + number(scale.high(), dimension());
      }
      if (value < scale.low()) {
        return "<" + number(scale.low(), dimension());
      }
    }
    return number(value, dimension());
  }

  private String number(double si, Dimension dimension) {
    return switch (dimension) {
      case GAUGE_PRESSURE,
          ABSOLUTE_PRESSURE,
          PRESSURE_DIFFERENCE,
          TEMPERATURE,
          TEMPERATURE_DIFFERENCE ->
          style.read(si, dimension, mark()).replace(" " + style.unit(dimension), "");
      default -> style.number(si, dimension);
    };
  }

  /** Whether a word was read that a sound system does not show. */
  boolean against() {
    return words() && look.reading().isPresent() && !foretold(look.sound()).equals(read());
  }

  /**
   * Whether the reading tells some forecasts apart.
   *
   * @param error of the model
   */
  boolean parts(List<Double> forecasts, ModelError error) {
    if (words()) {
      return forecasts.stream().map(this::foretold).distinct().count() > 1;
    }
    double low = forecasts.stream().mapToDouble(v -> v).min().orElse(0);
    double high = forecasts.stream().mapToDouble(v -> v).max().orElse(0);
    boolean engine = reading().about() instanceof About.EngineNeedle;
    double most = Math.max(Math.abs(low), Math.abs(high));
    double model = hot() ? error.temperature() : error.pressure() * most;
    double deviation = engine ? most / 10 : Math.hypot(model, mark() / 2);
    return high - low > PARTED * deviation;
  }
}
