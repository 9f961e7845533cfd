package dev.offtake.cause;

import dev.offtake.air.Day;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A day as it was written.
 *
 * @param text name or one line such as {@code 29.71 inHg station, 41 degF}; empty when given in
 *     lines
 * @param lines named lines as in the system file; empty when given as a text
 * @param day the air
 */
public record SaidDay(String text, Map<String, String> lines, Day day) {
  /** Keeps its map. */
  public SaidDay {
    lines = Collections.unmodifiableMap(new LinkedHashMap<>(lines));
  }
}
