package dev.offtake.time;

import dev.offtake.network.Network;
import dev.offtake.solve.Settler;
import dev.offtake.solve.Solution;

/** Plays drives on a network. Belongs to one thread. */
public final class Transient {
  private final Network network;
  private final Settler settler;

  /** Follows the playing, and may call it off. */
  @FunctionalInterface
  public interface Listener {
    /**
     * Told after each step.
     *
     * @param seconds how far it is
     * @return false to call it off
     */
    boolean goesOn(double seconds);
  }

  /** Prepares to play. */
  public Transient(Network network) {
    this.network = network;
    settler = new Settler(network);
  }

  /**
   * Plays a drive from the steady state of its start, with fresh memory.
   *
   * @param drive what is asked
   * @param settings how exactly, and how valves move
   * @param listener told after each step
   * @throws IllegalArgumentException when the drive names a number that no part has
   */
  public Played run(Drive drive, Settings settings, Listener listener) {
    settler.forget();
    return run(settler.solve(drive.start()), drive, settings, listener);
  }

  /**
   * Plays a drive from a state that is solved already, memory included.
   *
   * @param start of this network; the drive's own start is not solved again
   * @throws IllegalArgumentException when it is of another network, or when the drive names a
   *     number that no part has
   */
  @SuppressWarnings("ReferenceEquality") // the same network, not one that happens to be alike
  public Played run(Solution start, Drive drive, Settings settings, Listener listener) {
    if (start.network() != network) {
      throw new IllegalArgumentException("the start is a state of another network");
    }
    if (!start.solved()) {
      return new NotPlayed(start);
    }
    Player player = new Player(start, drive, settings, listener);
    Trace trace = player.play();
    return new Replay(start, drive, settings, trace, player);
  }
}
