package dev.offtake.measure.cases;

/** How far a failure stands out of healthy scatter, in sigmas. */
public enum Bin {
  /** Below 2: nobody could find it. */
  LOST(0, 2),
  /** 2 to 4. */
  NEAR(2, 4),
  /** 4 to 8. */
  CLEAR(4, 8),
  /** 8 and more. */
  PLAIN(8, Double.POSITIVE_INFINITY);

  private final double from;
  private final double to;

  Bin(double from, double to) {
    this.from = from;
    this.to = to;
  }

  double from() {
    return from;
  }

  double to() {
    return to;
  }

  /** Whether a shift lies in it. */
  public boolean holds(double shift) {
    return shift >= from && shift < to;
  }

  /** The one that holds a shift. */
  public static Bin of(double shift) {
    for (Bin bin : values()) {
      if (bin.holds(shift)) {
        return bin;
      }
    }
    return PLAIN;
  }
}
