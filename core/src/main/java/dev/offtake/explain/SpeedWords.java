package dev.offtake.explain;

import dev.offtake.quantity.QuantityProblem;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The trade's words for speeds on the command line: N2 is the core's, N1 the fan's. A question is
 * put by core speed, and the fan follows it.
 */
final class SpeedWords {
  private static final Pattern CORE =
      Pattern.compile("(?i)(?:N2|core speed|core)\\s*[:=]?\\s*([0-9.].*)");

  /** A number above 2 without a unit. */
  private static final Pattern BARE = Pattern.compile("[2-9](?:\\.\\d+)?|\\d{2,3}(?:\\.\\d+)?");

  private static final Pattern FAN =
      Pattern.compile("(?i)(?:N1|fan speed|fan)(?:\\s*[:=]?\\s*[0-9.].*)?");

  private SpeedWords() {}

  /**
   * The core speed in a text such as {@code N2 85 %}; a text without such a word as it is. Beside
   * the word a bare number is percent, as on every gauge of speed, unless it could be a share.
   *
   * @throws QuantityProblem for a fan speed, which does not say how hard the core works
   */
  static String core(String text) throws QuantityProblem {
    refuseFan(text);
    Matcher core = CORE.matcher(text);
    if (!core.matches()) {
      return text;
    }
    String speed = core.group(1).strip();
    return BARE.matcher(speed).matches() ? speed + " %" : speed;
  }

  /** Refuses a fan speed alone. */
  static void refuseFan(String text) throws QuantityProblem {
    if (FAN.matcher(text).matches()) {
      throw new QuantityProblem(
          "\"" + text + "\" is a fan speed (N1), and power is asked by core speed (N2)",
          "say the core speed, such as N2 85 %; the fan follows by the file's power settings");
    }
  }
}
