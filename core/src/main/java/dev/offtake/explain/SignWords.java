package dev.offtake.explain;

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
    String was = style.number(sign.healthy(), sign.dimension());
    return sign.part() + needle + " " + was + " -> " + style.print(sign.now(), sign.dimension());
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
