package dev.offtake.measure.cases;

import java.util.Locale;
import java.util.SplittableRandom;

/**
 * Prints some cases with their truth, for a person to judge: {@code ShowCases [NUMBER [COUNT]]}.
 */
public final class ShowCases {
  private static final int USUAL_COUNT = 8;

  private ShowCases() {}

  /** Prints. */
  public static void main(String[] args) {
    long number = args.length > 0 ? Long.parseLong(args[0]) : 1;
    int count = args.length > 1 ? Integer.parseInt(args[1]) : USUAL_COUNT;
    Cases cases = new Cases();
    SplittableRandom numbers = new SplittableRandom(number);
    for (int i = 0; i < count; i++) {
      System.out.println(words(draw(cases, i, numbers.nextLong())));
    }
    System.out.println(
        String.format(
            Locale.ROOT, "%d runs, %d of them drawn again", cases.runs(), cases.restless()));
  }

  /** Two by rate, one healthy, one stranger, and so on. */
  private static Case draw(Cases cases, int i, long number) {
    return switch (i % 4) {
      case 0, 1 -> cases.byRate(number);
      case 2 -> cases.healthy(number);
      default -> cases.stranger(number);
    };
  }

  private static String words(Case one) {
    return String.format(
        Locale.ROOT,
        "# TRUTH: %s; shift %.1f (%s); accepted: %s%n%s",
        one.truth().words(),
        one.shift(),
        one.bin().name().toLowerCase(Locale.ROOT),
        String.join(", ", one.truth().accepted()),
        one.readings());
  }
}
