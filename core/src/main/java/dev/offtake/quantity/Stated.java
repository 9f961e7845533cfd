package dev.offtake.quantity;

/**
 * A quantity as a file states it: a value, how far it may lie from it, and how well it is known.
 *
 * @param nominal the value that counts, SI; for a range its middle
 * @param low lowest acceptable or possible value, SI; equal to {@code nominal} where no tolerance
 *     is given
 * @param high highest acceptable or possible value, SI
 * @param knowledge where the value comes from
 * @param dimension what it measures; never {@link Dimension#PRESSURE}, which a value decides
 * @param text as it was written, without its source
 * @param source as it was written after the semicolon; empty when there is none
 */
public record Stated(
    double nominal,
    double low,
    double high,
    Knowledge knowledge,
    Dimension dimension,
    String text,
    String source) {

  /** How a value is known. */
  public enum Knowledge {
    /** A value, with or without a tolerance: {@code 32 psig +/- 3 psi}. */
    GIVEN,
    /** Anything in the range is healthy: {@code 25..35 psig}. */
    BAND,
    /** Nobody told; it lies somewhere in the range: {@code unknown 20..40 psig}. */
    UNKNOWN,
    /** The file says nothing; the kind's usual value is assumed. */
    TYPICAL
  }

  /** An exact value from nowhere in particular. */
  public static Stated of(double si, Dimension dimension) {
    return new Stated(si, si, si, Knowledge.GIVEN, dimension, "", "");
  }

  /** The same value from another source. */
  public Stated withSource(String newSource) {
    return new Stated(nominal, low, high, knowledge, dimension, text, newSource);
  }

  /** Whether the value is a range that is not known better. */
  public boolean unknown() {
    return knowledge == Knowledge.UNKNOWN;
  }
}
