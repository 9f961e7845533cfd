package dev.offtake.part;

import java.util.List;
import java.util.Map;

/**
 * A kind of part: what a file may say about one, and how to make one from what a file says.
 *
 * <p>The keys are the single source of the file's reader, of the JSON Schema and of the reference;
 * nothing else needs to know a kind by name.
 */
public interface Kind {
  /** Name in the trade's words, as written after {@code kind:}. */
  String name();

  /** What such a part is for, one or two sentences. */
  String says();

  /** What a file may say about one. */
  List<Key> keys();

  /** Name of the drawing symbol, after ISO 1219-1 and ISO 14617 where they have one. */
  String symbol();

  /** Removable units that make up such a part, the part itself first. */
  List<String> removableUnits();

  /** Positions of such a part that a condition may name, as in {@code overheat trip is tripped}. */
  default List<String> positions() {
    return List.of();
  }

  /**
   * What is taken for granted of every such part whatever a file says, told once for a system: the
   * line that it is about and one sentence; empty when there is nothing to tell.
   */
  default Map<String, String> assumes() {
    return Map.of();
  }

  /**
   * Makes a part.
   *
   * @param facts what the file says; also takes problems
   * @return the part, complete even when problems were found, so that more of them can be told at
   *     once
   */
  Part build(Facts facts);
}
