package dev.offtake.part;

import dev.offtake.quantity.Dimension;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One line that a part may have in a system file.
 *
 * @param name as written in the file
 * @param form what its value looks like
 * @param dimension of the quantity; null where there is none
 * @param second dimension of the condition in {@link Form#QUANTITY_AT} or of the second table
 *     column; null where there is none
 * @param required whether the part cannot do without it
 * @param typical text of the value assumed when the key is missing or unknown without a range;
 *     empty when there is none
 * @param choices words allowed in {@link Form#CHOICE}, columns of a {@link Form#TABLE}
 * @param example a value as a manual would print it
 * @param says what the line means, one sentence
 */
public record Key(
    String name,
    Form form,
    @Nullable Dimension dimension,
    @Nullable Dimension second,
    boolean required,
    String typical,
    List<String> choices,
    String example,
    String says) {

  /** Keeps its choices. */
  public Key {
    choices = List.copyOf(choices);
  }

  /** A quantity of a dimension. */
  public static Key quantity(String name, Dimension dimension, String example, String says) {
    return new Key(name, Form.QUANTITY, dimension, null, false, "", List.of(), example, says);
  }

  /** A value of another form without a dimension. */
  public static Key of(String name, Form form, String example, String says) {
    return new Key(name, form, null, null, false, "", List.of(), example, says);
  }

  /** One of a few words, the first being the one that holds when nothing is said. */
  public static Key choice(String name, List<String> choices, String says) {
    return new Key(name, Form.CHOICE, null, null, false, "", choices, choices.get(0), says);
  }

  /** A quantity that holds at a condition. */
  public static Key at(
      String name, Dimension dimension, Dimension second, String example, String says) {
    return new Key(name, Form.QUANTITY_AT, dimension, second, false, "", List.of(), example, says);
  }

  /** The same key, without which the part cannot be. */
  public Key must() {
    return new Key(name, form, dimension, second, true, typical, choices, example, says);
  }

  /**
   * The same key with a value that is assumed, and listed as an assumption, when the file does not
   * give one.
   */
  public Key usually(String text) {
    return new Key(name, form, dimension, second, required, text, choices, example, says);
  }

  /** The same key with table columns or words to choose from. */
  public Key among(String... words) {
    return new Key(name, form, dimension, second, required, typical, List.of(words), example, says);
  }

  /** The same key for values of a dimension. */
  public Key in(Dimension newDimension) {
    return new Key(name, form, newDimension, second, required, typical, choices, example, says);
  }
}
