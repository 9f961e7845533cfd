package dev.offtake.cause.find;

/**
 * A cause that was weighed.
 *
 * @param weighed against the readings
 * @param before belief in it before the readings, a natural logarithm
 * @param dormant whether nobody would have noticed it
 */
record Candidate(Weighed weighed, double before, boolean dormant) {
  double log() {
    return before + weighed.evidence();
  }
}
