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
  /** Whether both are answers. */
  boolean solved() {
    return healthy.solved() && broken.solved();
  }

  /** What can be looked at. */
  List<Sign> signs() {
    return Notice.between(healthy, broken);
  }
}
