package dev.offtake.system;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A piece of a file of named entries, whatever they mean, with the place where it stands. */
public sealed interface Item {
  /** Name of the file. */
  String file();

  /** Line in the file, from 1. */
  int line();

  /** What the piece is, for a message. */
  String words();

  /**
   * A scalar as typed.
   *
   * @param text without quotes and comment
   */
  record Words(String file, int line, String text) implements Item {
    @Override
    public String words() {
      return text.isEmpty() ? "nothing" : "`" + text + "`";
    }
  }

  /** Several items under one another, or in brackets. */
  record Listing(String file, int line, List<Item> items) implements Item {
    @Override
    public String words() {
      return "a list";
    }
  }

  /** Named entries. */
  record Section(String file, int line, Map<String, Entry> entries) implements Item {
    /** An empty section at the place of another item. */
    public static Section emptyAt(Item at) {
      return new Section(at.file(), at.line(), new LinkedHashMap<>());
    }

    @Override
    public String words() {
      return "named entries";
    }
  }

  /**
   * A named entry of a section.
   *
   * @param name its words, carrying the line of the name
   * @param value what is said
   */
  record Entry(Words name, Item value) {}
}
