package dev.offtake.desk;

import java.io.PrintWriter;
import java.util.function.DoubleConsumer;

/** Tells how far a slow answer has come; an answer within a second says nothing. */
final class Progress implements DoubleConsumer {
  private static final long PATIENCE = 1_000_000_000L;

  private final PrintWriter err;
  private final int tasks;
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
    this.err = err;
    this.tasks = tasks;
  }

  @Override
  public void accept(double share) {
    int tenths = (int) (10 * (done + share) / tasks);
    if (tenths > told && System.nanoTime() - began > PATIENCE) {
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
