package dev.offtake.desk;

import java.io.PrintWriter;
import java.util.function.DoubleConsumer;

/**
 * Tells a person at a terminal how far a slow answer has come; an answer within a second says
 * nothing. The launcher knows whether there is a terminal, which Java does not tell; without one
 * nothing is said, so that no control character gets into a file.
 */
final class Progress implements DoubleConsumer {
  /** Property by which the launcher says that what goes to {@code err} is seen on a terminal. */
  static final String TERMINAL = "offtake.terminal";

  private static final long PATIENCE = 1_000_000_000L;

  private final long patience;

  private final PrintWriter err;
  private final int tasks;
  private final boolean seen;
  private final long began = System.nanoTime();
  private int done;
  private int told = -1;

  /**
   * Prepares.
   *
   * @param err where progress goes
   * @param tasks how many answers there will be
   */
  Progress(PrintWriter err, int tasks) {
    this(err, tasks, Boolean.getBoolean(TERMINAL), PATIENCE);
  }

  /**
   * The same.
   *
   * @param seen whether a person looks on
   * @param patience how long nothing is said, ns
   */
  Progress(PrintWriter err, int tasks, boolean seen, long patience) {
    this.err = err;
    this.tasks = tasks;
    this.seen = seen;
    this.patience = patience;
  }

  @Override
  public void accept(double share) {
    int tenths = (int) (10 * (done + share) / tasks);
    if (seen && tenths > told && System.nanoTime() - began > patience) {
      told = tenths;
      err.print("\rworking, " + 10 * tenths + " % ");
      err.flush();
    }
  }

  /** The next answer begins. */
  void next() {
    done++;
  }

  /** All answers are there. */
  void end() {
    if (told >= 0) {
      err.print("\r                \r");
      err.flush();
    }
  }
}
