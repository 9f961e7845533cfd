package dev.offtake.explain;

import dev.offtake.air.Atmosphere;
import dev.offtake.air.Day;
import dev.offtake.part.Parameter;
import dev.offtake.part.Part;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Nearest;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.QuantityReader;
import dev.offtake.quantity.Stated;
import dev.offtake.quantity.Unit;
import dev.offtake.quantity.Units;
import dev.offtake.solve.Setup;
import dev.offtake.study.Fault;
import dev.offtake.study.Sweep;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * Reads what a curve runs over: {@code core=55..100}, {@code altitude=0..40000 ft}, {@code
 * air=-40..110 degF}, {@code Mach=0..0.8}, or a number of a part: {@code left bleed regulator
 * set=30..50 psig}. Without a range the usual one is taken.
 */
public final class Over {
  /** What a curve runs over when nothing is said. */
  public static final String USUAL = "core=55..100 %";

  private static final String STUCK = "stuck at";
  private static final String OPENING = "opening";

  /** Highest core speed that is looked at, a fraction. */
  private static final double FASTEST = 1.3;

  private static final double LOWEST = -5000;
  private static final double HIGHEST = 32000;
  private static final double COLDEST = 180;
  private static final double HOTTEST = 350;

  private final Question question;
  private final Map<String, Quantity> known = new LinkedHashMap<>();

  /**
   * A quantity that can be moved.
   *
   * @param name as it is printed
   * @param usual range when none is said; empty where there is none
   */
  private record Quantity(
      String name,
      Dimension dimension,
      double min,
      double max,
      String usual,
      Sweep.Knob knob,
      Optional<Setup.PartNumber> varied) {}

  private Over(Question question) {
    this.question = question;
    air();
    question.system().parts().forEach(this::part);
  }

  /**
   * Reads a text.
   *
   * @param question all that stands still
   * @param text such as {@code core=55..100}
   * @param points number of stops; 0 for the usual number
   * @throws QuantityProblem when the quantity is not known or the range is none
   */
  public static Sweep read(Question question, String text, int points) throws QuantityProblem {
    if (points != 0 && points < 2) {
      throw new QuantityProblem(
          points + " points make no curve", "say two or more, such as --points 50");
    }
    return new Over(question).sweep(text, points);
  }

  private void air() {
    DoubleUnaryOperator fan = question.fanLine();
    Setup here = question.setup();
    Day day = question.day();
    outside(
        "core",
        Dimension.SHARE,
        0.01,
        FASTEST,
        "55..100 %",
        v -> here.at(here.conditions().withSpeeds(v, fan.applyAsDouble(v))));
    double z = Atmosphere.altitude(day.pressure());
    double warmer = day.temperature() - Atmosphere.temperature(z);
    outside(
        "altitude",
        Dimension.LENGTH,
        LOWEST,
        HIGHEST,
        "0..40000 ft",
        v -> question.setupOn(Day.deviating(v, warmer).withMach(day.mach())));
    outside(
        "air temperature",
        Dimension.TEMPERATURE,
        COLDEST,
        HOTTEST,
        "-40..110 degF",
        v -> question.setupOn(new Day(day.pressure(), v, day.mach())));
    outside(
        "Mach",
        Dimension.NUMBER,
        0,
        1,
        "0..0.8",
        v -> question.setupOn(new Day(day.pressure(), day.temperature(), v)));
  }

  private void outside(
      String name, Dimension dimension, double min, double max, String usual, Sweep.Knob knob) {
    known.put(name, new Quantity(name, dimension, min, max, usual, knob, Optional.empty()));
  }

  private void part(Part part) {
    for (Parameter p : part.parameters()) {
      String name = part.name() + " " + spoken(p.name());
      Setup.PartNumber number = new Setup.PartNumber(part.name(), p.name());
      double min = p.name().equals(STUCK) ? Math.max(0, p.min()) : p.min();
      Sweep.Knob knob = v -> with(number, v);
      known.put(
          name, new Quantity(name, p.dimension(), min, p.max(), "", knob, Optional.of(number)));
    }
  }

  /** How a person says it: a valve is stuck at an opening. */
  private static String spoken(String parameter) {
    return parameter.equals(STUCK) ? OPENING : parameter;
  }

  private Setup with(Setup.PartNumber number, double value) {
    Setup here = question.setup();
    Map<Setup.PartNumber, Double> changed = new HashMap<>(here.changed());
    changed.put(number, value);
    return new Setup(here.conditions(), here.positions(), here.locks(), changed);
  }

  private Sweep sweep(String text, int points) throws QuantityProblem {
    int equals = text.indexOf('=');
    String name = (equals < 0 ? text : text.substring(0, equals)).strip();
    Quantity quantity = quantity(name);
    free(quantity);
    String range = equals < 0 ? quantity.usual() : text.substring(equals + 1).strip();
    if (range.isEmpty()) {
      throw new QuantityProblem(
          "nothing says from where to where " + quantity.name() + " runs",
          "write --over \"" + quantity.name() + "=" + example(quantity) + "\"");
    }
    if (range.chars().noneMatch(Character::isDigit)) {
      throw new QuantityProblem(
          "\"" + range + "\" is no range for " + quantity.name(),
          "write it as in " + quantity.name() + "=" + example(quantity));
    }
    String written = unitOf(range);
    Unit unit = unit(quantity, written);
    Stated ends = ends(quantity, range, written, unit);
    check(quantity, range, unit, ends);
    return new Sweep(
        quantity.name(),
        unit,
        Stops.of(ends.low(), ends.high(), unit, points),
        quantity.knob(),
        quantity.varied());
  }

  /** What a fault has changed cannot be moved as well: one of the two would not be told. */
  private void free(Quantity quantity) throws QuantityProblem {
    Optional<Fault> fault = quantity.varied().flatMap(question::changing);
    if (fault.isPresent()) {
      throw new QuantityProblem(
          "a curve cannot run over "
              + quantity.name()
              + " with \""
              + fault.get().name()
              + "\": the fault changes it",
          "move something else, or leave the fault out");
    }
  }

  /**
   * Shares of a part without a unit that end at 1 or before it are fractions: 0..1 is all of it.
   */
  private static Stated ends(Quantity quantity, String range, String written, Unit unit)
      throws QuantityProblem {
    if (!written.isEmpty()) {
      return QuantityReader.read(range, quantity.dimension());
    }
    if (quantity.dimension() == Dimension.SHARE && quantity.varied().isPresent()) {
      Stated plain = QuantityReader.read(range, Dimension.NUMBER);
      if (plain.high() <= 1) {
        return plain;
      }
    }
    return QuantityReader.read(range + unit.symbol(), quantity.dimension());
  }

  private Quantity quantity(String name) throws QuantityProblem {
    String asked =
        switch (name) {
          case "core speed", "power", "N2" -> "core";
          case "air" -> "air temperature";
          default -> name;
        };
    SpeedWords.refuseFan(asked);
    if (asked.endsWith(STUCK) && !known.containsKey(asked)) {
      asked = asked.substring(0, asked.length() - STUCK.length()) + OPENING;
    }
    if (asked.endsWith(" set to")) {
      asked = asked.substring(0, asked.length() - " to".length());
    }
    Quantity found = known.get(asked);
    if (found != null) {
      return found;
    }
    throw new QuantityProblem(
        "a curve cannot run over \"" + name + "\": nothing here has that name",
        Nearest.to(asked, known.keySet()).map(n -> Nearest.GUESS + n + "?").orElse(help(asked)));
  }

  /** What may be said: the numbers of a part that is named, else what always goes. */
  private String help(String asked) {
    List<String> own = new ArrayList<>();
    for (Part part : question.system().parts()) {
      if (asked.startsWith(part.name())) {
        part.parameters().forEach(p -> own.add(spoken(p.name())));
        return "numbers of the " + part.name() + " are " + String.join(", ", own);
      }
    }
    return "say core, altitude, air temperature, Mach, or a part and its number, such as"
        + " \"left bleed regulator set=30..50 psig\"";
  }

  private static String unitOf(String range) {
    int at = range.length();
    while (at > 0 && !Character.isDigit(range.charAt(at - 1))) {
      at--;
    }
    String unit = range.substring(at).strip();
    return unit.equals(".") ? "" : unit;
  }

  private static Unit unit(Quantity quantity, String written) throws QuantityProblem {
    if (written.isEmpty()) {
      return ownUnit(quantity);
    }
    Optional<Unit> unit = Units.find(written, quantity.dimension());
    if (unit.isEmpty()) {
      throw new QuantityProblem(
          "\"" + written + "\" is no unit of " + quantity.name(),
          "write it as in " + quantity.name() + "=" + example(quantity));
    }
    return unit.get();
  }

  /** Only a share or a bare number goes without a unit. */
  private static Unit ownUnit(Quantity quantity) throws QuantityProblem {
    boolean plain =
        quantity.dimension() == Dimension.SHARE || quantity.dimension() == Dimension.NUMBER;
    if (!plain) {
      throw new QuantityProblem(
          "the range of " + quantity.name() + " has no unit",
          "write it as in " + quantity.name() + "=" + example(quantity));
    }
    return Units.of(quantity.dimension()).get(0);
  }

  private static String example(Quantity quantity) {
    if (!quantity.usual().isEmpty()) {
      return quantity.usual();
    }
    return switch (quantity.dimension()) {
      case GAUGE_PRESSURE -> "30..50 psig";
      case ABSOLUTE_PRESSURE -> "30..60 psia";
      case PRESSURE_DIFFERENCE -> "0..5 psi";
      case TEMPERATURE -> "350..450 degF";
      case TEMPERATURE_DIFFERENCE -> "0..50 degF";
      case AREA -> "0..2 in2";
      case LENGTH -> "1..4 in";
      case MASS_FLOW -> "0..100 lb/min";
      case SHARE -> "0..100 %";
      case NUMBER -> "0.5..1";
      default -> "a range with a unit";
    };
  }

  private static void check(Quantity quantity, String range, Unit unit, Stated ends)
      throws QuantityProblem {
    if (ends.unknown() || !(ends.high() > ends.low())) {
      throw new QuantityProblem(
          "\"" + range + "\" is no range to run over: it has no length",
          "write two different ends, such as " + quantity.name() + "=" + example(quantity));
    }
    double slack = 1e-9 * Math.max(Math.abs(quantity.min()), Math.abs(quantity.max()));
    if (ends.low() < quantity.min() - slack || ends.high() > quantity.max() + slack) {
      Axis axis = new Axis(unit, quantity.max() - quantity.min());
      throw new QuantityProblem(
          "\"" + range + "\" is outside anything that " + quantity.name() + " can be",
          "stay between " + axis.number(quantity.min()) + " and " + axis.print(quantity.max()));
    }
  }
}
