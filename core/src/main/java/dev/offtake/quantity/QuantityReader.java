package dev.offtake.quantity;

/** Reads quantities as manuals print them. */
public final class QuantityReader {
  private QuantityReader() {}

  /**
   * Reads a value with its tolerance and source.
   *
   * @param text such as {@code 42 psig +4 -2; SD p.7}
   * @param dimension what is expected
   * @return the value in SI
   * @throws QuantityProblem when the text is not a quantity of that dimension
   */
  public static Stated read(String text, Dimension dimension) throws QuantityProblem {
    throw new UnsupportedOperationException();
  }
}
