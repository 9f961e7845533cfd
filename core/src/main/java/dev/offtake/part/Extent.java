package dev.offtake.part;

import dev.offtake.quantity.Dimension;

/**
 * How far a failure may go, in the units of the shop: always a size, never a sign; a drift up and a
 * drift down are two modes.
 *
 * @param says what the number is, such as {@code share open} or {@code area of the hole}
 * @param dimension how it is measured
 * @param least smallest that anybody would call a failure, SI, above zero or zero
 * @param usual taken when nobody says how far, SI
 * @param most physically possible, SI
 */
public record Extent(String says, Dimension dimension, double least, double usual, double most) {
  /** Checks the order of the three. */
  public Extent {
    if (!(least >= 0 && least <= usual && usual <= most && least < most)) {
      throw new IllegalArgumentException("not in order: " + least + ", " + usual + ", " + most);
    }
  }

  /** Whether an extent lies within what is possible. */
  public boolean holds(double extent) {
    return extent >= least && extent <= most;
  }
}
