package dev.offtake.desk.page;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.offtake.quantity.QuantityProblem;

/** A request that gets no answer: one message, and how to mend it. */
final class Refusal extends RuntimeException {
  private static final long serialVersionUID = 1;

  /** Status of HTTP: what was sent cannot be answered. */
  static final int BAD = 400;

  static final int FORBIDDEN = 403;
  static final int MISSING = 404;
  static final int TOO_LARGE = 413;
  static final int TOO_MANY = 429;
  static final int FAULT = 500;
  static final int BUSY = 503;

  /** No more of a message is sent: what was typed may be in it. */
  private static final int LONGEST = 600;

  private final int status;
  private final String mend;

  /**
   * A refusal.
   *
   * @param status of HTTP, 400 or more
   * @param message what is wrong, one sentence
   * @param mend what to do, one sentence
   */
  Refusal(int status, String message, String mend) {
    super(message, null, false, false);
    this.status = status;
    this.mend = mend;
  }

  /** What a person asked and nobody can answer. */
  static Refusal of(QuantityProblem problem) {
    return new Refusal(BAD, problem.wrong(), problem.mend());
  }

  /** Status of HTTP. */
  int status() {
    return status;
  }

  /** As it is sent. */
  ObjectNode json() {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.putObject("problem")
        .put("message", plain(String.valueOf(getMessage())))
        .put("mend", plain(mend));
    return root;
  }

  /** One line without control characters. */
  private static String plain(String text) {
    String line = text.replaceAll("[\\p{Cntrl}\\p{Cf}]+", " ").strip();
    return line.length() > LONGEST ? line.substring(0, LONGEST) + "…" : line;
  }
}
