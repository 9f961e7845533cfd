package dev.offtake.part;

import java.util.List;
import java.util.function.Function;

/** A kind as a value. */
record SimpleKind(
    String name,
    String says,
    String symbol,
    List<Key> keys,
    List<String> removableUnits,
    List<String> positions,
    Function<Facts, Part> maker)
    implements Kind {
  SimpleKind {
    keys = List.copyOf(keys);
    removableUnits = List.copyOf(removableUnits);
    positions = List.copyOf(positions);
  }

  /** A kind whose parts stand in no position that a condition may name. */
  SimpleKind(
      String name,
      String says,
      String symbol,
      List<Key> keys,
      List<String> removableUnits,
      Function<Facts, Part> maker) {
    this(name, says, symbol, keys, removableUnits, List.of(), maker);
  }

  @Override
  public Part build(Facts facts) {
    return maker.apply(facts);
  }
}
