package dev.offtake.profile;

import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.QuantityReader;
import dev.offtake.quantity.Stated;

/**
 * A number of the engine that a profile may give, with the range that is taken where it does not.
 *
 * @param key name of its line
 * @param dimension what it measures
 * @param usual value with its range, taken where nobody says one
 * @param says what it is, a sentence without a full stop
 * @param least least value, SI
 * @param most largest value, SI
 */
public record Input(
    String key, Dimension dimension, String usual, String says, double least, double most) {

  /** The value that is taken where nobody says one. */
  public Stated typical() {
    try {
      return QuantityReader.read(usual, dimension);
    } catch (QuantityProblem wrong) {
      throw new IllegalStateException(key, wrong);
    }
  }

  /**
   * Reads a value.
   *
   * @throws QuantityProblem when it is none, or cannot be
   */
  Stated read(String text) throws QuantityProblem {
    Stated stated = QuantityReader.read(text, dimension);
    if (Double.isNaN(stated.nominal())) {
      Stated typical = typical();
      return new Stated(
          typical.nominal(),
          typical.low(),
          typical.high(),
          Stated.Knowledge.UNKNOWN,
          dimension,
          usual,
          stated.source());
    }
    if (stated.low() < least || stated.high() > most) {
      throw new QuantityProblem(
          "`" + key + "` cannot be " + stated.text(),
          "write it as in `" + key + ": " + usual + "`");
    }
    return stated;
  }
}
