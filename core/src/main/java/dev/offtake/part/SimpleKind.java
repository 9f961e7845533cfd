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
    Function<Facts, Part> maker)
    implements Kind {
  SimpleKind {
    keys = List.copyOf(keys);
    removableUnits = List.copyOf(removableUnits);
  }

  @Override
  public Part build(Facts facts) {
    return maker.apply(facts);
  }
}
