package dev.offtake.system;

import dev.offtake.system.Item.Entry;
import dev.offtake.system.Item.Words;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A part as a file writes it, on one side, overrides already laid over it.
 *
 * @param side name of its side; empty outside
 * @param at its name as written
 * @param section section in which it stands, such as {@code trips}
 * @param entries its lines by key
 */
record PartDraft(String side, Words at, String section, Map<String, Entry> entries) {
  PartDraft {
    entries = new LinkedHashMap<>(entries);
  }

  String name() {
    return NameBook.full(side, at.text());
  }
}
