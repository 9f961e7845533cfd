package dev.offtake.logic;

import dev.offtake.quantity.Nearest;

/** A condition that cannot be understood. The caller adds file and line. */
public final class ConditionProblem extends Exception {
  private static final long serialVersionUID = 1L;

  private final String mend;

  /**
   * Makes the problem.
   *
   * @param wrong what is wrong, one sentence without a full stop
   * @param mend how to mend it, one sentence without a full stop
   */
  public ConditionProblem(String wrong, String mend) {
    super(wrong);
    this.mend = mend;
  }

  /** What is wrong. */
  public String wrong() {
    return String.valueOf(getMessage());
  }

  /** Whether the mend names the one word that was probably meant. */
  public boolean guesses() {
    return mend.startsWith(Nearest.GUESS);
  }

  /** How to mend it. */
  public String mend() {
    return mend;
  }
}
