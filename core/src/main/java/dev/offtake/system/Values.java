package dev.offtake.system;

import dev.offtake.part.Facts.At;
import dev.offtake.part.Facts.Below;
import dev.offtake.part.Facts.Limit;
import dev.offtake.part.Facts.Reset;
import dev.offtake.part.Key;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.QuantityReader;
import dev.offtake.quantity.Stated;
import java.util.Objects;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Reads the small sentences around quantities.
 *
 * <pre>
 *   at     = quantity "at" quantity
 *   limit  = quantity [ "for" time ]
 *   below  = word "below" quantity
 *   reset  = ( "by hand" | "by itself" ) [ ( "below" | "above" ) quantity ]
 * </pre>
 *
 * Each may end with {@code ; source}.
 */
final class Values {
  private static final Pattern TEMPERATURE = Pattern.compile(".*(deg|°).*|.*[0-9] *[FCKR]");

  private Values() {}

  /**
   * Words before and after a joint, each carrying the source.
   *
   * @param left before; all where the joint is missing
   * @param right after; empty where the joint is missing
   * @param source with its semicolon; empty when there is none
   */
  record Split(String left, String right, String source) {
    static Split on(String joint, String text) {
      int semicolon = text.indexOf(';');
      String value = semicolon < 0 ? text : text.substring(0, semicolon);
      String source = semicolon < 0 ? "" : text.substring(semicolon);
      int at = value.indexOf(" " + joint + " ");
      if (at < 0) {
        return new Split(value.strip(), "", source);
      }
      String right = value.substring(at + joint.length() + 2).strip();
      return new Split(value.substring(0, at).strip(), right, source);
    }
  }

  /** The words without their source. */
  static String withoutSource(String text) {
    int semicolon = text.indexOf(';');
    return (semicolon < 0 ? text : text.substring(0, semicolon)).strip();
  }

  /** The source alone. */
  static String source(String text) {
    int semicolon = text.indexOf(';');
    return semicolon < 0 ? "" : text.substring(semicolon + 1).strip();
  }

  static Stated quantity(String text, Key key) throws QuantityProblem {
    return QuantityReader.read(text, Objects.requireNonNullElse(key.dimension(), Dimension.NUMBER));
  }

  /** A limit of a reading: a temperature or a pressure, unless the key says which. */
  private static Stated limitOf(String text, Key key) throws QuantityProblem {
    if (key.dimension() != null) {
      return quantity(text, key);
    }
    boolean temperature = TEMPERATURE.matcher(withoutSource(text)).matches();
    return QuantityReader.read(text, temperature ? Dimension.TEMPERATURE : Dimension.PRESSURE);
  }

  static At at(String text, Key key) throws QuantityProblem {
    Split split = Split.on("at", text);
    if (split.right().isEmpty()) {
      String wrong = "`" + key.name() + "` does not say at what it holds";
      throw new QuantityProblem(wrong, "Write it as in `" + key.example() + "`");
    }
    Dimension second = Objects.requireNonNullElse(key.second(), Dimension.NUMBER);
    Stated value = quantity(split.left() + split.source(), key);
    return new At(value, QuantityReader.read(split.right() + split.source(), second));
  }

  static Limit limit(String text, Key key) throws QuantityProblem {
    Split split = Split.on("for", text);
    double seconds =
        split.right().isEmpty() ? 0 : QuantityReader.read(split.right(), Dimension.TIME).nominal();
    return new Limit(limitOf(split.left() + split.source(), key), seconds);
  }

  static Below below(String text, Key key) throws QuantityProblem {
    Split split = Split.on("below", text);
    if (split.right().isEmpty()) {
      String wrong = "`" + key.name() + "` needs a word and the value below which it holds";
      throw new QuantityProblem(wrong, "Write it as in `" + key.example() + "`");
    }
    if (!key.choices().isEmpty() && !key.choices().contains(split.left())) {
      String wrong = "`" + split.left() + "` is nothing that `" + key.name() + "` can say";
      throw new QuantityProblem(wrong, Hint.of(split.left(), key.choices()));
    }
    return new Below(split.left(), limitOf(split.right() + split.source(), key));
  }

  static Reset reset(String text, Key key) throws QuantityProblem {
    String joint = text.contains(" above ") ? "above" : "below";
    Split split = Split.on(joint, text);
    boolean byHand = split.left().equals("by hand");
    if (!byHand && !split.left().equals("by itself")) {
      String wrong = "`" + split.left() + "` is no way to reset";
      throw new QuantityProblem(wrong, "Write `by hand` or `by itself`, with `below` or `above`");
    }
    @Nullable Stated value =
        split.right().isEmpty() ? null : limitOf(split.right() + split.source(), key);
    return new Reset(byHand, value);
  }
}
