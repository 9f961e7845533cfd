package dev.offtake.desk;

/** How a command ended, for scripts. */
public enum Exit {
  /** The question was answered. */
  DONE(0),
  /** The question was answered, and the answer is "no": a limit is passed, a need is not met. */
  NO(1),
  /** The input cannot be used: a file, an option or a value is wrong. The person can mend it. */
  BAD_INPUT(2),
  /** No answer: the network was not solved, or Offtake itself failed. */
  NOT_SOLVED(3);

  private final int code;

  Exit(int code) {
    this.code = code;
  }

  /** The exit code of the process, 0 to 3. */
  public int code() {
    return code;
  }
}
