package dev.offtake.logic;

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

  /** How to mend it. */
  public String mend() {
    return mend;
  }
}
