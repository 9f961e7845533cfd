package dev.offtake.study.effect;

import dev.offtake.network.Network;
import dev.offtake.solve.Settler;
import dev.offtake.solve.Solution;
import dev.offtake.study.Broken;

/**
 * Solves broken networks one after the other; belongs to one thread. Most faults are changed
 * numbers of the healthy network, whose equations are kept; one that rebuilds parts has equations
 * of its own until the next one comes.
 */
final class Bench {
  private final Settler healthy;
  private Settler other;

  Bench(Network network) {
    healthy = new Settler(network);
    other = healthy;
  }

  /**
   * Solves.
   *
   * @param broken what is broken
   * @param occasion when
   * @param start a state to start from
   */
  Solution solve(Broken broken, Occasion occasion, Solution start) {
    Settler settler = settler(broken.network());
    settler.startFrom(start);
    return settler.solve(broken.setup(occasion.setup()));
  }

  @SuppressWarnings("ReferenceEquality") // the same network, not one that happens to be alike
  private Settler settler(Network network) {
    if (network == healthy.network()) {
      return healthy;
    }
    if (network != other.network()) {
      other = new Settler(network);
    }
    return other;
  }
}
