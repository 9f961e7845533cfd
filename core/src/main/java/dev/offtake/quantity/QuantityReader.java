package dev.offtake.quantity;

import dev.offtake.quantity.Stated.Knowledge;

/**
 * Reads quantities as manuals print them.
 *
 * <pre>
 * text      = value [";" source]
 * value     = amount [tolerance] | range | "unknown" [range]
 * range     = amount (".." | "to") amount
 * tolerance = ("+/-" | "±") amount | "+" amount ["-" amount] | "-" amount ["+" amount]
 *             each in the unit of the value, or "% of value", or "points" of a percentage
 * amount    = number unit ["at" temperature pressure, for scfm only]
 * number    = 12 | 12,000 | 0.5 | .5 | 12E4
 * </pre>
 *
 * A unit may be written once for both ends of a range and for a value and its tolerance. Percent as
 * a tolerance are refused until told of what; a decimal comma is refused; {@code ppm} is asked
 * back.
 */
public final class QuantityReader {
  /** Longer texts are not quantities. */
  private static final int LONGEST = 200;

  /** No barometer has read more, Pa; a gauge cannot show more below ambient. */
  private static final double HIGHEST_AMBIENT = 110_000;

  private QuantityReader() {}

  /**
   * A value and its source, apart.
   *
   * @param value what stands before the first semicolon, stripped
   * @param source what stands after it, stripped; empty when there is none
   */
  public record Split(String value, String source) {}

  /**
   * A limit and how long it must be passed.
   *
   * @param value the limit
   * @param seconds the delay, s; 0 when none is written
   */
  public record Timed(Stated value, double seconds) {}

  /**
   * A value and the condition at which it holds.
   *
   * @param value the value
   * @param at the condition
   */
  public record Conditioned(Stated value, Stated at) {}

  /** Parts a value from its source at the first semicolon. */
  public static Split split(String text) {
    int semicolon = text.indexOf(';');
    return semicolon < 0
        ? new Split(text.strip(), "")
        : new Split(text.substring(0, semicolon).strip(), text.substring(semicolon + 1).strip());
  }

  /**
   * Reads a value with its tolerance and source.
   *
   * @param text such as {@code 42 psig +4 -2; SD p.7}
   * @param dimension what is expected; with {@link Dimension#PRESSURE} the value says whether it is
   *     gauge or absolute
   * @return the value in SI; NaN for a bare {@code unknown}, which counts as gauge where {@link
   *     Dimension#PRESSURE} is expected
   * @throws QuantityProblem when the text is not a quantity of that dimension
   */
  public static Stated read(String text, Dimension dimension) throws QuantityProblem {
    Split split = split(text);
    if (split.value().isEmpty()) {
      throw new QuantityProblem("there is no value", "write one, or unknown");
    }
    if (split.value().length() > LONGEST) {
      throw new QuantityProblem(
          "the text is too long for a value", "put remarks after a semicolon");
    }
    StandardFlow.Read flow = StandardFlow.read(split.value(), dimension);
    Draft draft = draft(new Cursor(flow.value()), flow.expected());
    return possible(draft, split);
  }

  /**
   * Reads a limit with its delay.
   *
   * @param text such as {@code 490 degF for 3 s; SD p.9}
   * @param allowed dimensions that the limit may have, the likeliest first
   * @return the limit and its delay, 0 s when none is written
   * @throws QuantityProblem when the text is no limit of an allowed dimension
   */
  public static Timed readLimit(String text, Dimension... allowed) throws QuantityProblem {
    Split split = split(text);
    int at = split.value().lastIndexOf(" for ");
    String limit = at < 0 ? split.value() : split.value().substring(0, at);
    double seconds = at < 0 ? 0 : delay(split.value().substring(at + 5));
    return new Timed(readAny(limit + ";" + split.source(), allowed), seconds);
  }

  /**
   * Reads a value that holds at a condition.
   *
   * @param text such as {@code 0..0.2 lb/min at 30 psid; SD p.6}
   * @param dimension of the value
   * @param condition dimension of the condition
   * @return both; the source goes to both
   * @throws QuantityProblem when either is not understood or the condition is missing
   */
  public static Conditioned readAt(String text, Dimension dimension, Dimension condition)
      throws QuantityProblem {
    Split split = split(text);
    int at = split.value().lastIndexOf(" at ");
    if (at < 0) {
      throw new QuantityProblem(
          "'%s' does not say at which %s".formatted(split.value(), condition.words()),
          "add 'at' and a " + condition.words());
    }
    String source = ";" + split.source();
    return new Conditioned(
        read(split.value().substring(0, at) + source, dimension),
        read(split.value().substring(at + 4) + source, condition));
  }

  /** Reads a value of the first dimension that fits, or tells why it fits none. */
  private static Stated readAny(String text, Dimension... allowed) throws QuantityProblem {
    QuantityProblem first = null;
    for (Dimension dimension : allowed) {
      try {
        return read(text, dimension);
      } catch (QuantityProblem problem) {
        first = first == null ? problem : first;
      }
    }
    if (first == null) {
      throw new IllegalArgumentException("no dimension is allowed");
    }
    throw first;
  }

  private static double delay(String text) throws QuantityProblem {
    Stated delay = read(text, Dimension.TIME);
    if (delay.nominal() >= 0) {
      return delay.nominal();
    }
    throw new QuantityProblem("'" + text + "' is no delay", "write a time of zero or more");
  }

  /** What was read, before it is checked against nature. */
  private record Draft(
      double nominal, double low, double high, Knowledge knowledge, Dimension dimension) {}

  private static Draft draft(Cursor cursor, Expected expected) throws QuantityProblem {
    boolean unknown = cursor.acceptWord("unknown");
    if (unknown && cursor.atEnd()) {
      Dimension dimension = expected.dimension();
      boolean either = dimension == Dimension.PRESSURE;
      Dimension own = either ? Dimension.GAUGE_PRESSURE : dimension;
      return new Draft(Double.NaN, Double.NaN, Double.NaN, Knowledge.UNKNOWN, own);
    }
    Cursor.Amount first = cursor.amount();
    if (cursor.accept("..") || cursor.acceptWord("to")) {
      return range(first, cursor, expected, unknown ? Knowledge.UNKNOWN : Knowledge.BAND);
    }
    return single(first, cursor, expected, unknown);
  }

  private static Draft range(
      Cursor.Amount first, Cursor cursor, Expected expected, Knowledge knowledge)
      throws QuantityProblem {
    Cursor.Amount second = cursor.amount();
    cursor.end();
    Cursor.Amount from = borrow(first, second.unit());
    Unit unit = expected.unit(from);
    double low = unit.toSi(from.number());
    Unit upper = expected.unit(borrow(second, first.unit()));
    double high = upper.toSi(second.number());
    if (unit.dimension() != upper.dimension()) {
      throw new QuantityProblem(
          "a range cannot run from %s to %s"
              .formatted(unit.dimension().words(), upper.dimension().words()),
          "write both ends in " + unit.symbol());
    }
    if (low > high) {
      throw new QuantityProblem("the range runs backwards", "write the lower end first");
    }
    return new Draft(low / 2 + high / 2, low, high, knowledge, unit.dimension());
  }

  private static Draft single(
      Cursor.Amount written, Cursor cursor, Expected expected, boolean unknown)
      throws QuantityProblem {
    Tolerance tolerance = Tolerance.read(cursor);
    cursor.end();
    boolean wide = tolerance.plus() != null || tolerance.minus() != null;
    if (unknown && !wide) {
      throw new QuantityProblem(
          "'unknown' goes with a range", "write unknown alone, or a range such as 20..40 psig");
    }
    boolean bare = expected.dimension() == Dimension.NUMBER;
    Cursor.Amount value = bare ? written : borrow(written, tolerance.unit().orElse(""));
    Unit unit = expected.unit(value);
    double nominal = unit.toSi(value.number());
    double low = nominal - tolerance.below(value, unit, expected);
    double high = nominal + tolerance.above(value, unit, expected);
    Knowledge knowledge = unknown ? Knowledge.UNKNOWN : Knowledge.GIVEN;
    return new Draft(nominal, low, high, knowledge, unit.dimension());
  }

  /** An amount with its own unit, or with that of its neighbour. */
  private static Cursor.Amount borrow(Cursor.Amount amount, String unit) {
    boolean own = !amount.unit().isEmpty() || unit.isEmpty();
    return own ? amount : new Cursor.Amount(amount.number(), unit, amount.written() + " " + unit);
  }

  private static Stated possible(Draft draft, Split split) throws QuantityProblem {
    double lowest =
        switch (draft.dimension()) {
          case ABSOLUTE_PRESSURE, TEMPERATURE -> 0;
          case GAUGE_PRESSURE -> -HIGHEST_AMBIENT;
          default -> Double.NEGATIVE_INFINITY;
        };
    if (draft.low() < lowest) {
      boolean hot = draft.dimension() == Dimension.TEMPERATURE;
      throw new QuantityProblem(
          "'%s' reaches below %s".formatted(split.value(), hot ? "absolute zero" : "vacuum"),
          "check its sign and its unit");
    }
    return new Stated(
        draft.nominal(),
        draft.low(),
        draft.high(),
        draft.knowledge(),
        draft.dimension(),
        split.value(),
        split.source());
  }
}
