package dev.offtake.system;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * How switches and valves stand.
 *
 * @param name such as {@code packs off}
 * @param positions position of each switch that does not stand at its first one, by full name
 * @param locks parts that a person has fixed, by full name
 */
public record LineUp(String name, Map<String, String> positions, Map<String, Lock> locks) {
  /** Name of the line-up that holds when none is asked for. */
  public static final String USUAL = "usual";

  /** Keeps its maps. */
  public LineUp {
    positions = Collections.unmodifiableMap(new LinkedHashMap<>(positions));
    locks = Collections.unmodifiableMap(new LinkedHashMap<>(locks));
  }

  /** What a person has done to a valve. */
  public enum Lock {
    /** Locked open. */
    LOCKED_OPEN("locked open"),
    /** Locked shut. */
    LOCKED_SHUT("locked shut"),
    /** Taken away, both ends closed. */
    REMOVED_AND_CAPPED("removed and capped");

    private final String words;

    Lock(String words) {
      this.words = words;
    }

    /** The lock of the given words, which must be those of one. */
    static Lock of(String words) {
      for (Lock lock : values()) {
        if (lock.words.equals(words)) {
          return lock;
        }
      }
      throw new IllegalArgumentException(words);
    }

    /** As a file writes it. */
    public String words() {
      return words;
    }
  }
}
