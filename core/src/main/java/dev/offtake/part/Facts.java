package dev.offtake.part;

import dev.offtake.logic.Condition;
import dev.offtake.quantity.Stated;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a file says about one part, key by key, already read against the kind's {@link Key}s: units
 * are checked, names are full names with the side unfolded, values that were not given are the
 * typical ones and have been noted as assumptions.
 *
 * <p>No method throws for a user's mistake: it notes a problem and returns something harmless.
 */
public interface Facts {
  /** Full name of the part. */
  String name();

  /** Whether the file gives the key. */
  boolean has(String key);

  /** The value in force of a quantity, given or typical. */
  Stated stated(String key);

  /** Nominal value in SI, given or typical; NaN when there is neither. */
  double si(String key);

  /** A quantity with the condition at which it holds, given or typical. */
  At at(String key);

  /** Quantities with their conditions; empty when not given. */
  List<When> whens(String key);

  /** A limit with its delay; null when not given. */
  @Nullable Limit limit(String key);

  /** What happens below a limit; null when not given. */
  @Nullable Below below(String key);

  /** How a latch comes back; null when not given. */
  @Nullable Reset reset(String key);

  /**
   * The day that a key names, engine at rest; the standard day when not given. Its speeds mean
   * nothing.
   */
  Conditions day(String key);

  /** Full name of a point; {@code ambient} when not given. */
  String point(String key);

  /** What is measured where; null when not given. */
  @Nullable Reading reading(String key);

  /** Two points. */
  Path path(String key);

  /** A condition; null when not given. */
  @Nullable Condition condition(String key);

  /** One of the key's choices; the first when not given. */
  String choice(String key);

  /** Any text, or the name of a part or bus, as a full name; empty when not given. */
  String text(String key);

  /** Needles of a gauge: mark on the needle and what it reads. */
  List<Needle> needles(String key);

  /**
   * Rows of numbers in SI in the order of the key's columns; empty when not given. A column of
   * {@code PRESSURE} comes as absolute pressure, gauge values being counted from the ambient of the
   * day that the key {@code taken on} names.
   */
  List<double[]> table(String key);

  /**
   * The condition that electrical power is there for a bus named by a key; null when the key is not
   * given.
   */
  @Nullable Condition powered(String key);

  /**
   * Notes a problem with what the file says for a key.
   *
   * @param key the key at fault, or an empty text for the part as a whole
   * @param wrong what is wrong, one sentence
   * @param mend how to mend it, one sentence
   */
  void problem(String key, String wrong, String mend);

  /**
   * Notes an assumption that follows from what the file does not say.
   *
   * @param key what it is about
   * @param says the assumption, one sentence with its value
   */
  void assume(String key, String says);

  /**
   * Makes a parameter from a quantity.
   *
   * @param key quantity in the file
   * @param min smallest physically possible value, SI
   * @param max largest physically possible value, SI
   * @param unit removable unit
   */
  default Parameter parameter(String key, double min, double max, String unit) {
    Stated stated = stated(key);
    return new Parameter(
        key, stated.nominal(), stated.low(), stated.high(), min, max, stated.dimension(), unit);
  }

  /** A quantity and the value of something else at which it holds. */
  record At(Stated value, Stated at) {}

  /** A quantity and when it holds; a null condition always holds. */
  record When(Stated value, @Nullable Condition when) {}

  /** A limit and how long it must be passed, s. */
  record Limit(Stated value, double seconds) {}

  /** A word and the value below which it holds: {@code shuts below 8 psig}. */
  record Below(String word, Stated value) {}

  /**
   * Whether a latch is reset by hand (else by itself), and the value that must be regained first;
   * null when none.
   */
  record Reset(boolean byHand, @Nullable Stated value) {}

  /** A point and whether its temperature (else its pressure) is meant. */
  record Reading(String point, boolean temperature) {
    /** Name as a file writes it. */
    public String name() {
      return point + (temperature ? " temperature" : " pressure");
    }
  }

  /** Two points and whether air is meant to flow either way. */
  record Path(String from, String to, boolean bothWays) {}

  /** A needle of a gauge. */
  record Needle(String mark, Reading reads) {}
}
