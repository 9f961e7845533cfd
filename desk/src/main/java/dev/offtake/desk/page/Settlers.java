package dev.offtake.desk.page;

import dev.offtake.network.Network;
import dev.offtake.solve.Settler;
import java.util.concurrent.ConcurrentLinkedDeque;
import java.util.function.Function;

/** Solvers of one network, lent to one thread at a time. */
final class Settlers {
  private final Network network;
  private final ConcurrentLinkedDeque<Settler> free = new ConcurrentLinkedDeque<>();

  Settlers(Network network) {
    this.network = network;
  }

  /** The network. */
  Network network() {
    return network;
  }

  /** Lends a solver that remembers no state. */
  <T> T lend(Function<Settler, T> use) {
    Settler settler = free.pollFirst();
    if (settler == null) {
      settler = new Settler(network);
    }
    settler.forget();
    T result = use.apply(settler);
    free.addFirst(settler); // one that failed half-way is not lent again
    return result;
  }
}
