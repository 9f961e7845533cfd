package dev.offtake.explain;

import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Style;
import dev.offtake.study.Sign;

/** What can be seen, in a clause each. */
final class SignWords {
  private SignWords() {}

  /** A sign with its healthy and present value: {@code left duct pressure 23.1 -> 13.4 psig}. */
  static String of(Sign sign, Style style) {
    boolean number = sign.what() == Sign.What.NEEDLE || sign.what() == Sign.What.ENGINE;
    if (!number) {
      return sign.part() + " " + sign.before() + " -> " + sign.after();
    }
    String needle = sign.needle().isEmpty() ? "" : " " + sign.needle();
    return sign.part() + needle + " " + numbers(sign, style);
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
