package dev.offtake.study;

/**
 * A number that can be looked at, and from which change on it tells something.
 *
 * @param was healthy, SI
 * @param is now, SI
 * @param limit change from which on it is plain
 * @param least change from which on it could be read at all
 */
record Measured(double was, double is, double limit, double least) {
  /** Whether the change would be noticed. */
  Sign.Verdict verdict() {
    double change = Math.abs(is - was);
    if (change > limit) {
      return Sign.Verdict.PLAIN;
    }
    return change > least ? Sign.Verdict.LOST : Sign.Verdict.HIDDEN;
  }
}
