package dev.offtake.quantity;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * How far a value may lie off: {@code +/- 3}, {@code ± 3 psi}, {@code +4 -2}, {@code +/- 5 % of
 * value}, {@code +/- 1 points}.
 *
 * @param plus above the value; null when it may not lie above
 * @param minus below the value; null when it may not lie below
 * @param ofValue whether percent are meant of the value
 */
record Tolerance(Cursor.@Nullable Amount plus, Cursor.@Nullable Amount minus, boolean ofValue) {
  private static final Tolerance NONE = new Tolerance(null, null, false);

  /** Reads a tolerance, or none where none is written. */
  static Tolerance read(Cursor cursor) throws QuantityProblem {
    Tolerance read = sides(cursor);
    return new Tolerance(read.plus, read.minus, ofValue(cursor));
  }

  private static Tolerance sides(Cursor cursor) throws QuantityProblem {
    if (cursor.accept("+/-") || cursor.accept("±") || cursor.accept("+-")) {
      Cursor.Amount both = cursor.unsigned();
      return new Tolerance(both, both, false);
    }
    if (cursor.accept("+")) {
      Cursor.Amount plus = cursor.unsigned();
      return new Tolerance(plus, cursor.accept("-") ? cursor.unsigned() : null, false);
    }
    if (cursor.accept("-")) {
      Cursor.Amount minus = cursor.unsigned();
      return new Tolerance(cursor.accept("+") ? cursor.unsigned() : null, minus, false);
    }
    return NONE;
  }

  private static boolean ofValue(Cursor cursor) throws QuantityProblem {
    if (!cursor.acceptWord("of")) {
      return false;
    }
    if (cursor.acceptWord("value")) {
      return true;
    }
    throw new QuantityProblem(
        "percent of '" + cursor.rest() + "' is not understood",
        "write % of value, or the tolerance in the unit of the value");
  }

  /** The unit that stands behind the tolerance only: {@code 32 +/- 3 psig}. */
  Optional<String> unit() {
    for (Cursor.Amount side : new Cursor.@Nullable Amount[] {minus, plus}) {
      if (side != null && !side.unit().isEmpty()) {
        return Optional.of(side.unit());
      }
    }
    return Optional.empty();
  }

  /** How far the value may lie above, SI. */
  double above(Cursor.Amount value, Unit unit, Expected expected) throws QuantityProblem {
    return si(plus, value, unit, expected);
  }

  /** How far the value may lie below, SI. */
  double below(Cursor.Amount value, Unit unit, Expected expected) throws QuantityProblem {
    return si(minus, value, unit, expected);
  }

  private double si(Cursor.@Nullable Amount side, Cursor.Amount value, Unit unit, Expected expected)
      throws QuantityProblem {
    if (side == null) {
      return 0;
    }
    boolean share = unit.dimension() == Dimension.SHARE;
    if (share && Units.key(side.unit()).matches("%?points?")) {
      return side.number() * unit.factor();
    }
    if (Units.find(side.unit(), Dimension.SHARE).isPresent()) {
      return percent(side, value, unit);
    }
    if (ofValue) {
      throw new QuantityProblem(side.written() + " of value is not a share", "write % of value");
    }
    if (!side.unit().isEmpty()) {
      return factor(side, expected) * side.number();
    }
    if (share) {
      throw whichPercent(side);
    }
    return side.number() * unit.factor();
  }

  private double percent(Cursor.Amount side, Cursor.Amount value, Unit unit)
      throws QuantityProblem {
    if (!ofValue) {
      throw whichPercent(side);
    }
    return side.number() / 100 * Math.abs(value.number()) * unit.factor();
  }

  private static QuantityProblem whichPercent(Cursor.Amount side) {
    String number = side.written().replaceAll("[^0-9.].*", "");
    return new QuantityProblem(
        "a tolerance of %s does not say percent of what".formatted(side.written()),
        "write +/- %s %% of value, or +/- %s points of a percentage".formatted(number, number));
  }

  /** A tolerance on psig is a difference; papers write it in psi or in psig. */
  private static double factor(Cursor.Amount side, Expected expected) throws QuantityProblem {
    Expected spread = new Expected(expected.spread(), expected.own());
    Optional<Unit> sameAsValue = Units.find(side.unit(), expected.dimension());
    return sameAsValue.isPresent() ? sameAsValue.get().factor() : spread.unit(side).factor();
  }
}
