package dev.offtake.cause;

import dev.offtake.system.Item.Words;
import dev.offtake.system.Texts;

/**
 * One reading as it was written, cut into pieces.
 *
 * @param name what was read
 * @param value what was read of it
 * @param with what it was read with; empty text for the system's own gauge
 * @param note what the reader adds
 */
record Entered(Words name, Words value, Words with, String note) {
  private static final String WITH = " with ";

  /** Takes {@code 23 psig with test gauge 7; note} apart. */
  static Entered of(Words name, Words said) {
    String value = Texts.value(said.text());
    int with = value.lastIndexOf(WITH);
    return new Entered(
        name,
        Texts.at(said, with < 0 ? value : value.substring(0, with)),
        Texts.at(said, with < 0 ? "" : value.substring(with + WITH.length())),
        Texts.note(said.text()));
  }
}
