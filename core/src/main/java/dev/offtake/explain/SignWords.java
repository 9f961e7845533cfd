package dev.offtake.explain;

import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Style;
import dev.offtake.study.Sign;

/** What can be seen, in a clause each. */
final class SignWords {
  private SignWords() {}

  /** A sign with its healthy and present value: {@code left duct pressure 23.1 -> 13.4 psig}. */
  static String of(Sign sign, Style style) {
    if (sign.what() == Sign.What.ENGINE) {
      return shift(sign, style);
    }
    if (sign.what() != Sign.What.NEEDLE) {
      return sign.part() + " " + sign.before() + " -> " + sign.after();
    }
    String needle = sign.needle().isEmpty() ? "" : " " + sign.needle();
    return sign.part() + needle + " " + numbers(sign, style);
  }

  /**
   * An engine gauge: {@code left exhaust gauge reads 8 °F higher}. Where its needle stands is not
   * known, only how far bleed air moves it.
   */
  static String shift(Sign sign, Style style) {
    String size = style.print(Math.abs(sign.change()), sign.dimension());
    return sign.part() + " reads " + size + (sign.change() > 0 ? " higher" : " lower");
  }

  /** Both values: {@code 23.1 -> 13.4 psig}, {@code 43.2 -> pegged at 80 psig}. */
  static String numbers(Sign sign, Style style) {
    String was =
        sign.before().equals(Sign.PEGGED)
            ? pegged(sign.healthy(), sign.dimension(), style)
            : style.number(sign.healthy(), sign.dimension());
    String is =
        sign.after().equals(Sign.PEGGED)
            ? pegged(sign.now(), sign.dimension(), style)
            : style.print(sign.now(), sign.dimension());
    return was + " -> " + is;
  }

  /** How a needle stands, as a verb: {@code reads 13.4 psig}, {@code is pegged at 80 psig}. */
  static String stands(double value, String state, Dimension dimension, Style style) {
    return state.equals(Sign.PEGGED)
        ? " is " + pegged(value, dimension, style)
        : " reads " + style.print(value, dimension);
  }

  /** An end of a scale is a mark: no decimals where it has none. */
  private static String pegged(double end, Dimension dimension, Style style) {
    return "pegged at " + style.print(end, dimension).replaceFirst("\\.0+ ", " ");
  }

  /** A verdict as it is printed; what nobody sees in capitals. */
  static String of(Sign.Verdict verdict) {
    return switch (verdict) {
      case PLAIN -> "plain";
      case LOST -> "lost in the gauge";
      case HIDDEN -> "HIDDEN";
    };
  }
}
