package dev.offtake.time;

import dev.offtake.network.Network;
import dev.offtake.solve.Solution;

/** Plays drives on a network. Belongs to one thread. */
public final class Transient {
  private final Network network;

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
  }

  /**
   * Plays a drive from the steady state of its start, with fresh memory.
   *
   * @param drive what is asked
   * @param settings how exactly, and how valves move
   * @param listener told after each step
   */
  public Played run(Drive drive, Settings settings, Listener listener) {
    throw new UnsupportedOperationException(network + " " + drive + settings + listener.getClass());
  }

  /**
   * Plays a drive from a state that is solved already, memory included.
   *
   * @param start of this network; the drive's own start is not solved again
   */
  public Played run(Solution start, Drive drive, Settings settings, Listener listener) {
    throw new UnsupportedOperationException(
        "" + start.solved() + drive + settings + listener.getClass());
  }
}
