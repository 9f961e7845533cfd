package dev.offtake.flow;

/** The opening curves that have a name. */
enum NamedCurve implements OpeningCurve {
  /** Area is the opening. */
  LINEAR {
    @Override
    double share(double opening) {
      return opening;
    }

    @Override
    double rise(double opening) {
      return 1;
    }
  },

  /** The open share of a round bore behind a disc turned by 90° times the opening: 1 − cos. */
  BUTTERFLY {
    @Override
    double share(double opening) {
      double half = Math.sin(0.25 * Math.PI * opening);
      return 2 * half * half;
    }

    @Override
    double rise(double opening) {
      return 0.5 * Math.PI * Math.sin(0.5 * Math.PI * opening);
    }
  },

  /**
   * Equal steps of opening multiply the area alike; rangeability 50 (common practice, no source).
   */
  EQUAL_PERCENTAGE {
    @Override
    double share(double opening) {
      return Math.expm1(opening * LN_RANGE) / (RANGE - 1);
    }

    @Override
    double rise(double opening) {
      return LN_RANGE * Math.exp(opening * LN_RANGE) / (RANGE - 1);
    }
  };

  private static final double RANGE = 50;
  private static final double LN_RANGE = Math.log(RANGE);

  abstract double share(double opening);

  abstract double rise(double opening);

  @Override
  public double area(double opening) {
    return share(Math.min(Math.max(opening, 0), 1));
  }

  @Override
  public double slope(double opening) {
    return rise(Math.min(Math.max(opening, 0), 1));
  }
}
