package dev.offtake.explain;

import dev.offtake.cause.About;
import dev.offtake.cause.Reading;
import dev.offtake.cause.Value;
import dev.offtake.cause.find.Match;
import dev.offtake.cause.find.MatchedNumber;
import dev.offtake.cause.find.MatchedNumber.Verdict;
import dev.offtake.cause.find.MatchedPace;
import dev.offtake.cause.find.PaceLine;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Grammar;
import dev.offtake.quantity.Style;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a match is called in words.
 *
 * @param style units
 */
record MatchWords(Style style) {

  /** The part and its line. */
  static String name(MatchedNumber number) {
    return number.number().part() + ", " + number.statement().key();
  }

  /** The answer in a sentence or two. */
  List<String> headline(Match match) {
    long told = match.worthWriting().size();
    List<String> says = new ArrayList<>();
    if (!match.settled()) {
      says.add("The matching DID NOT COME TO REST: use none of these numbers.");
    }
    says.add(
        match.healthy()
            ? "The run fits a sound engine."
            : "This does NOT LOOK LIKE A SOUND ENGINE: see `offtake find` before using any of it.");
    String loose = Grammar.count(match.numbers().size(), "loose number");
    says.add(
        match.numbers().isEmpty()
            ? "The file states no loose number that readings could tell."
            : "The readings tell " + told + " of " + loose + " of the file.");
    match.numbers().stream()
        .filter(MatchedNumber::faulty)
        .forEach(n -> says.add(name(n) + " is outside its band."));
    match.left().stream()
        .filter(left -> !left.fits())
        .forEach(
            left ->
                says.add(
                    left.reading().about().name()
                        + " at "
                        + left.scene().name()
                        + " does not fit the other readings."));
    match
        .otherwise()
        .forEach(r -> says.add(r.about().name() + " should not be " + r.value().words() + "."));
    return says;
  }

  /** Value and standard deviation: {@code 41.2 psig +/- 0.5}. */
  String after(MatchedNumber number) {
    Dimension dimension = number.statement().stated().dimension();
    return style.print(number.value(), dimension) + " +/- " + spread(number.deviation(), dimension);
  }

  private String spread(double deviation, Dimension dimension) {
    return switch (dimension) {
      case TEMPERATURE -> style.number(deviation, Dimension.TEMPERATURE_DIFFERENCE);
      case GAUGE_PRESSURE, ABSOLUTE_PRESSURE ->
          style.number(deviation, Dimension.PRESSURE_DIFFERENCE);
      default -> style.number(deviation, dimension);
    };
  }

  /** How far a number lies outside its band. */
  String beyond(MatchedNumber number) {
    String by = spread(number.beyond(), number.statement().stated().dimension());
    return number.faulty()
        ? "OUTSIDE ITS BAND by " + by + ": this engine may not be healthy"
        : "outside its band by " + by + ", which is less than is uncertain";
  }

  String pressure(Match.ErrorLeft left) {
    return error(
        left,
        ErrorWords.pressure(left.after(), style),
        style.print(left.before(), Dimension.SHARE));
  }

  String temperature(Match.ErrorLeft left) {
    Dimension difference = Dimension.TEMPERATURE_DIFFERENCE;
    return error(
        left, style.print(left.after(), difference), style.print(left.before(), difference));
  }

  private static String error(Match.ErrorLeft left, String after, String before) {
    if (left.readings() == 0) {
      return "none was read: " + before + " stays";
    }
    String readings = Grammar.count(left.readings(), "reading");
    return left.told()
        ? after + " (was " + before + "), from " + readings
        : "the readings are too few to tell (" + readings + "): " + before + " stays";
  }

  List<String> standsOn(Match match) {
    return List.of(
        "Everything that nobody knows exactly moved at once: the loose numbers above and "
            + match.others()
            + " more (gauge errors, core speed, the air, lines that state no number alone).",
        "Each number stays near its band unless the readings pull it: +/- is one standard deviation"
            + " and counts the model error that was left.",
        "Told well: three quarters or more of what was not known; partly: 30 % or more. Pairs of"
            + " numbers may still be wrong together.");
  }

  /** What a reading that is a number measures. */
  static Dimension dimension(Reading reading) {
    if (reading.value() instanceof Value.Figure figure) {
      return figure.stated().dimension();
    }
    if (reading.value() instanceof Value.Against against) {
      return against.other().temperature()
          ? Dimension.TEMPERATURE_DIFFERENCE
          : Dimension.PRESSURE_DIFFERENCE;
    }
    if (reading.value() instanceof Value.Swinging swinging && swinging.between().isPresent()) {
      return swinging.between().get().dimension();
    }
    return reading.about() instanceof About.EngineNeedle engine
        ? engine.dimension()
        : Dimension.SHARE;
  }

  /** How well a number is told. */
  static String told(Verdict verdict) {
    return verdict.words();
  }

  /** A time or a friction of a valve: {@code 2.1 s}, {@code 1 %}. */
  String pace(MatchedPace pace, double value) {
    if (pace.line() == PaceLine.FRICTION) {
      return style.print(value, Dimension.SHARE);
    }
    return new BigDecimal(value).round(new MathContext(2)).toPlainString() + " s";
  }

  /** How many times and frictions the recording does not tell. */
  String notTold(int count) {
    return Grammar.count(count, "time") + " and frictions that this recording does not tell";
  }

  /** Lines of a profile that say how valves move. */
  List<String> valves(List<MatchedPace> told) {
    Map<String, List<String>> lines = new LinkedHashMap<>();
    for (MatchedPace pace : told) {
      double value = new BigDecimal(pace.value()).round(new MathContext(3)).doubleValue();
      String number =
          pace.line() == PaceLine.FRICTION
              ? style.print(value, Dimension.SHARE)
              : BigDecimal.valueOf(value).toPlainString() + " s";
      lines
          .computeIfAbsent(pace.part(), part -> new ArrayList<>())
          .add(pace.line().words() + ": " + number);
    }
    List<String> valves = new ArrayList<>(List.of("valves:"));
    lines.forEach((part, own) -> valves.add("  " + part + ": {" + String.join(", ", own) + "}"));
    return valves;
  }
}
