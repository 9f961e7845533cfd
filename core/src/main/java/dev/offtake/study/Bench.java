package dev.offtake.study;

import dev.offtake.network.Network;
import dev.offtake.solve.Settler;
import dev.offtake.solve.Setup;
import dev.offtake.solve.Solution;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Solves broken networks one after the other; belongs to one thread. Most faults are changed
 * numbers of the healthy network, whose equations are kept; one that rebuilds parts has equations
 * of its own until others have come.
 */
public final class Bench {
  /**
   * Other networks whose equations are kept: one that is broken, and the same with a trip latched.
   */
  private static final int MOST = 2;

  private final Settler healthy;
  private final List<Settler> others = new ArrayList<>();
  private boolean nearby;

  /** Prepares to break a healthy network. */
  public Bench(Network network) {
    healthy = new Settler(network);
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
   * @param start a state to start from
   * @param expected what it may come to when something trips; see {@link Settler#expect}
   */
  public Solution solve(Broken broken, Setup asked, Solution start, List<Solution> expected) {
    Settler settler = settler(broken.network());
    settler.startFrom(start);
    settler.expect(expected);
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

  /** Whether answers are only looked for near the state to start from; see {@link Settler}. */
  public void nearby(boolean only) {
    nearby = only;
  }

  private Settler settler(Network network) {
    Settler settler = of(network);
    settler.nearby(nearby);
    return settler;
  }

  @SuppressWarnings("ReferenceEquality") // the same network, not one that happens to be alike
  private Settler of(Network network) {
    if (network == healthy.network()) {
      return healthy;
    }
    for (Settler known : others) {
      if (network == known.network()) {
        return known;
      }
    }
    if (others.size() == MOST) {
      others.remove(0);
    }
    others.add(new Settler(network));
    return others.get(others.size() - 1);
  }
}
