package dev.offtake.quantity;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What a line of a file expects: a dimension, and the unit that this one text brings with it.
 *
 * @param dimension what is expected
 * @param own a unit that only this text defines (scfm on its day); null for none
 */
record Expected(Dimension dimension, @Nullable Unit own) {

  /** Finds the unit of a value, or says why it is none. */
  Unit unit(Cursor.Amount amount) throws QuantityProblem {
    if (own != null && Units.key(amount.unit()).equals(Units.key(own.symbol()))) {
      return own;
    }
    Optional<Unit> unit = Units.find(amount.unit(), dimension);
    if (unit.isPresent()) {
      return unit.get();
    }
    throw refusal(amount);
  }

  /** The dimension in which a tolerance on the value is stated. */
  Dimension spread() {
    return switch (dimension) {
      case GAUGE_PRESSURE, ABSOLUTE_PRESSURE, PRESSURE -> Dimension.PRESSURE_DIFFERENCE;
      case TEMPERATURE -> Dimension.TEMPERATURE_DIFFERENCE;
      default -> dimension;
    };
  }

  /** Why the unit of an amount will not do. */
  QuantityProblem refusal(Cursor.Amount amount) {
    String written = amount.written();
    String key = Units.key(amount.unit());
    if (key.isEmpty()) {
      return new QuantityProblem(written + " has no unit", withUnit());
    }
    if (key.equals("scfm")) {
      return StandardFlow.needsDay(written, dimension);
    }
    if (key.equals("ppm")) {
      return new QuantityProblem("ppm could be a flow or a share", "did you mean lb/min?");
    }
    return Units.findAny(amount.unit())
        .map(other -> otherDimension(written, other))
        .orElseGet(() -> unknownUnit(amount.unit()));
  }

  private QuantityProblem otherDimension(String written, Unit other) {
    if (pressure() && other.dimension() == Dimension.PRESSURE_DIFFERENCE) {
      return new QuantityProblem(
          written + " does not say whether it is gauge or absolute",
          "say " + gaugeOrAbsolute(other));
    }
    return new QuantityProblem(
        "%s is %s, not %s".formatted(written, a(other.dimension()), a(dimension)), instead(other));
  }

  /** The same unit in the dimension that is expected where there is one, else the usual units. */
  private String instead(Unit other) {
    return Units.of(dimension).stream()
        .filter(unit -> unit.factor() == other.factor() && similar(unit, other))
        .findFirst()
        .map(unit -> "say " + unit.symbol())
        .orElseGet(this::withUnit);
  }

  private static boolean similar(Unit one, Unit other) {
    return one.symbol().regionMatches(0, other.symbol(), 0, 2);
  }

  private static String gaugeOrAbsolute(Unit plain) {
    String gap = plain.symbol().equals("psi") ? "" : " ";
    return plain.symbol() + gap + "g or " + plain.symbol() + gap + "a";
  }

  private QuantityProblem unknownUnit(String unit) {
    List<String> known = Units.of(dimension).stream().map(Unit::symbol).toList();
    String mend =
        Nearest.to(unit, known).map(near -> "did you mean " + near + "?").orElse(withUnit());
    return new QuantityProblem("'%s' is no unit of %s".formatted(unit, dimension.words()), mend);
  }

  private String withUnit() {
    if (pressure()) {
      return dimension == Dimension.ABSOLUTE_PRESSURE ? "say psia or bar a" : "say psig or psia";
    }
    if (dimension == Dimension.NUMBER) {
      return "write the number alone";
    }
    return "say " + Nearest.or(Units.of(dimension).stream().limit(3).map(Unit::symbol).toList());
  }

  private boolean pressure() {
    return dimension == Dimension.GAUGE_PRESSURE
        || dimension == Dimension.ABSOLUTE_PRESSURE
        || dimension == Dimension.PRESSURE;
  }

  private static String a(Dimension dimension) {
    return Grammar.a(dimension.words());
  }
}
