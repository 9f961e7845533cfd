package dev.offtake.system;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A path as written: {@code mid duct -> interstage} or {@code left duct <-> right duct}.
 *
 * @param from first point as written
 * @param to second point as written
 * @param bothWays whether air is meant to flow either way
 */
record PathWords(String from, String to, boolean bothWays) {
  private static final Pattern PATH = Pattern.compile("([^<>]*[^<>\\s-])\\s*(<?->)\\s*([^<>]+)");

  /** The path in a text, or null when it is none. */
  static @Nullable PathWords of(String text) {
    Matcher path = PATH.matcher(text.strip());
    if (!path.matches()) {
      return null;
    }
    return new PathWords(path.group(1), path.group(3).strip(), path.group(2).equals("<->"));
  }
}
