package dev.offtake.cause.find;

import dev.offtake.cause.chance.Gauss;
import java.util.function.DoubleUnaryOperator;

/** How well a forecast agrees with what was read or said. */
sealed interface Likelihood {
  /**
   * A number that was read: normal about the forecast.
   *
   * @param value as it was read, SI
   * @param variance of the reading and of the forecast together, gauge constants left out
   * @param reader variance of the reading alone, gauge constants left out: all there is where the
   *     forecast hangs on nothing, such as the needle that is stuck
   * @param own the same, its gauge's constant error included
   * @param scale width of the scale on which a slip of the pen would lie
   */
  record Measured(double value, double variance, double reader, double own, double scale)
      implements Likelihood {}

  /**
   * A word: its chance hangs on the value.
   *
   * @param chance of the word, given the true value
   * @param none chance of the word when nothing on the list is the cause
   * @param soft whether it counts less than a reading
   */
  record Said(DoubleUnaryOperator chance, double none, boolean soft) implements Likelihood {
    /** Natural logarithm of the chance for a value that is only known to lie about a mean. */
    double log(double mean, double deviation) {
      return Math.log(Math.max(1e-12, Gauss.mean(chance, mean, deviation)));
    }
  }
}
