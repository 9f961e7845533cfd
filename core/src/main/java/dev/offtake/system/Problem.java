package dev.offtake.system;

import java.util.Comparator;

/**
 * A mistake in a system file.
 *
 * @param file name of the file as it was given
 * @param line line in it, from 1
 * @param wrong what is wrong, one sentence without a full stop
 * @param mend how to mend it, one sentence without a full stop
 */
public record Problem(String file, int line, String wrong, String mend) {
  /** Order in which problems are told: by file, then by line. */
  static final Comparator<Problem> ORDER =
      Comparator.comparing(Problem::file).thenComparingInt(Problem::line);

  @Override
  public String toString() {
    return file + ":" + line + ": " + wrong + ". " + mend;
  }
}
