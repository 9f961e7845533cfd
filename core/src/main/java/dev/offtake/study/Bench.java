package dev.offtake.study;

import dev.offtake.network.Network;
import dev.offtake.solve.Settler;
import dev.offtake.solve.Setup;
import dev.offtake.solve.Solution;
import java.util.Optional;

/**
 * Solves broken networks one after the other; belongs to one thread. Most faults are changed
 * numbers of the healthy network, whose equations are kept; one that rebuilds parts has equations
 * of its own until the next one comes.
 */
public final class Bench {
  private final Settler healthy;
  private Settler other;

  /** Prepares to break a healthy network. */
  public Bench(Network network) {
    healthy = new Settler(network);
    other = healthy;
  }

  /**
   * Solves.
   *
   * @param broken what is broken
   * @param asked the question about the healthy system
   * @param start a state to start from
   */
  public Solution solve(Broken broken, Setup asked, Solution start) {
    Settler settler = settler(broken.network());
    settler.startFrom(start);
    return settler.solve(broken.setup(asked));
  }

  /**
   * Solves.
   *
   * @param broken what is broken
   * @param asked the question about the healthy system
   * @param start a state to start from; empty to start from nothing
   */
  public Solution solve(Broken broken, Setup asked, Optional<Solution> start) {
    if (start.isPresent()) {
      return solve(broken, asked, start.get());
    }
    Settler settler = settler(broken.network());
    settler.forget();
    return settler.solve(broken.setup(asked));
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
