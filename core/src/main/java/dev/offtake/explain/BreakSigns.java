package dev.offtake.explain;

import dev.offtake.quantity.Style;
import dev.offtake.study.Notice;
import dev.offtake.study.Sign;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What can be looked at, in words. */
final class BreakSigns {
  private final Style style;

  BreakSigns(Style style) {
    this.style = style;
  }

  /** Verdict in the words of the shop. */
  static String word(Sign.Verdict verdict) {
    return switch (verdict) {
      case PLAIN -> "plain";
      case LOST -> "lost in the gauge";
      case HIDDEN -> "HIDDEN";
    };
  }

  /** The sign that tells most; empty when none tells anything. */
  static Optional<Sign> best(List<Sign> signs, boolean atPort) {
    return signs.stream()
        .filter(sign -> sign.atPort() == atPort && sign.verdict() != Sign.Verdict.HIDDEN)
        .min(
            Comparator.comparing(Sign::verdict)
                .thenComparing(Comparator.comparingDouble(Sign::weight).reversed())
                .thenComparing(sign -> sign.what() != Sign.What.LIGHT));
  }

  /** A sign with both values: {@code duct gauge L 22.7 -> 12.1 psig}. */
  String says(Sign sign) {
    return switch (sign.what()) {
      case NEEDLE -> needle(sign) + " " + SignWords.numbers(sign, style);
      case ENGINE -> SignWords.shift(sign, style);
      case LIGHT -> sign.part() + (sign.now() > 0 ? " comes on" : " goes out");
      case TRIP -> sign.part() + (sign.now() > 0 ? " TRIPS" : " does not trip");
      case USER -> sign.part() + user(sign);
    };
  }

  /** A user is a sign only where it changes between enough and short. */
  private static String user(Sign sign) {
    if (Notice.isShort(sign.after())) {
      return " goes short";
    }
    boolean takes = !sign.after().equals("stuck shut");
    return takes ? " has enough, healthy it is short" : " takes nothing, healthy it is short";
  }

  /** A sign with both values and where it is seen. */
  String withPlace(Sign sign) {
    boolean told = sign.seen().isEmpty() || sign.part().contains(sign.seen());
    return says(sign) + (told ? "" : ", " + sign.seen());
  }

  /** A needle by gauge and mark, or by what it reads where that says more. */
  static String needle(Sign sign) {
    if (sign.atPort()) {
      return sign.reads();
    }
    return sign.needle().isEmpty() ? sign.part() : sign.part() + " " + sign.needle();
  }
}
