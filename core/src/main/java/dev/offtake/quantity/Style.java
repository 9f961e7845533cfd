package dev.offtake.quantity;

/** Units in which answers are printed. */
public enum Style {
  /** psig, °F, lb/min, in. */
  SHOP,
  /** bar, °C, kg/s, mm. */
  METRIC;

  /** The number alone, rounded for the shop, such as {@code 23.1}. */
  public String number(double si, Dimension dimension) {
    throw new UnsupportedOperationException();
  }

  /** The unit alone, such as {@code psig}. */
  public String unit(Dimension dimension) {
    throw new UnsupportedOperationException();
  }

  /** Number and unit, such as {@code 23.1 psig}. */
  public String print(double si, Dimension dimension) {
    throw new UnsupportedOperationException();
  }
}
