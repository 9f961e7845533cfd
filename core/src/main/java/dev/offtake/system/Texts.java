package dev.offtake.system;

import dev.offtake.quantity.QuantityReader;
import dev.offtake.system.Item.Words;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Pieces of text that keep their place. */
public final class Texts {
  /** A comma that does not stand inside a number such as 35,000. */
  private static final Pattern BETWEEN = Pattern.compile(",(?![0-9]{3}(?![0-9]))");

  private Texts() {}

  /** Another text at the same place. */
  public static Words at(Item place, String text) {
    return new Words(place.file(), place.line(), text.strip());
  }

  /** What stands between commas, empty pieces left out. */
  public static List<Words> pieces(Words words) {
    List<Words> pieces = new ArrayList<>();
    for (String piece : BETWEEN.split(words.text(), -1)) {
      if (!piece.isBlank()) {
        pieces.add(at(words, piece));
      }
    }
    return pieces;
  }

  /** The known name that is written, upper and lower case alike. */
  public static Optional<String> named(String text, Collection<String> known) {
    return known.stream()
        .filter(name -> name.equals(text))
        .findFirst()
        .or(() -> known.stream().filter(name -> name.equalsIgnoreCase(text)).findFirst());
  }

  /** The longest known name with which a text begins, case alike. */
  public static Optional<String> begun(String text, Collection<String> known) {
    return known.stream()
        .filter(name -> begins(text, name))
        .max(Comparator.comparingInt(String::length));
  }

  /** Whether a text begins with whole words. */
  public static boolean begins(String text, String words) {
    boolean begins = text.regionMatches(true, 0, words, 0, words.length());
    return begins
        && (text.length() == words.length() || " :,".indexOf(text.charAt(words.length())) >= 0);
  }

  /** A text without what stands after its semicolon. */
  public static String value(String text) {
    return QuantityReader.split(text).value();
  }

  /** What stands after the semicolon of a text; empty for none. */
  public static String note(String text) {
    return QuantityReader.split(text).source();
  }
}
