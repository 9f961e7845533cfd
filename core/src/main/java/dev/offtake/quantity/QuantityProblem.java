package dev.offtake.quantity;

/**
 * A quantity that cannot be understood: what is wrong and how to mend it. The caller adds file and
 * line.
 */
public final class QuantityProblem extends Exception {
  private static final long serialVersionUID = 1L;

  private final String mend;

  /**
   * Makes the problem.
   *
   * @param wrong what is wrong, one sentence without a full stop
   * @param mend how to mend it, one sentence without a full stop
   */
  public QuantityProblem(String wrong, String mend) {
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
