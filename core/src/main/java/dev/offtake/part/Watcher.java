package dev.offtake.part;

import java.util.List;

/** A part that only watches: no air flows through it. */
interface Watcher extends Part {
  @Override
  default List<Leg> legs() {
    return List.of();
  }

  @Override
  default Element element(Wiring wiring) {
    return new NoAir();
  }
}
