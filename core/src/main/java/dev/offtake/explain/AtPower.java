package dev.offtake.explain;

import dev.offtake.solve.Solution;
import dev.offtake.study.Notice;
import dev.offtake.study.Sign;
import java.util.List;

/**
 * The healthy and the broken state at one power.
 *
 * @param power its name
 * @param healthy the healthy state
 * @param broken the state with the failure
 */
record AtPower(String power, Solution healthy, Solution broken) {
  /** Stands for the name of a power that the file does not name. */
  static final String AS_ASKED = "as asked";

  /** Some powers, in a sentence: {@code at ground idle, cruise}, {@code as asked}. */
  static String words(List<String> powers) {
    List<String> named = powers.stream().filter(power -> !power.equals(AS_ASKED)).toList();
    String at = named.isEmpty() ? "" : "at " + String.join(", ", named);
    boolean asked = named.size() < powers.size();
    return asked ? AS_ASKED + (at.isEmpty() ? "" : " and " + at) : at;
  }

  /** Whether both are answers. */
  boolean solved() {
    return healthy.solved() && broken.solved();
  }

  /** What can be looked at. */
  List<Sign> signs() {
    return Notice.between(healthy, broken);
  }
}
