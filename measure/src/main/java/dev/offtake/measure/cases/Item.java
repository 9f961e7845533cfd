package dev.offtake.measure.cases;

/**
 * Something that is read.
 *
 * @param kind what
 * @param side whose; the left one for what belongs to none
 */
record Item(Kind kind, Side side) {
  /** What can be read. */
  enum Kind {
    /** A needle of the duct gauge. */
    DUCT,
    /** A needle of the thermometer in the ducts. */
    TEMPERATURE,
    /** The gauge at the interstage test port. */
    INTERSTAGE,
    /** The light of the trips. */
    TRIP_LIGHT,
    /** The light of the leak loops. */
    LEAK_LIGHT,
    /** How the isolation valve stands, by its switches. */
    POSITION
  }

  /** Whether it is a number. */
  boolean number() {
    return kind == Kind.DUCT || kind == Kind.INTERSTAGE || hot();
  }

  /** Whether it is a temperature. */
  boolean hot() {
    return kind == Kind.TEMPERATURE;
  }

  /** Distance of two marks, Pa or K. */
  double mark() {
    return hot() ? 10 * Shop.DEG_F : Shop.PSI;
  }

  /** As a readings file calls it. */
  String words() {
    return switch (kind) {
      case DUCT -> side.of("duct pressure");
      case TEMPERATURE -> side.of("duct temperature");
      case INTERSTAGE -> side.of("interstage pressure");
      case TRIP_LIGHT -> side.of(Parts.TRIP_LIGHT);
      case LEAK_LIGHT -> side.of(Parts.LEAK_LIGHT);
      case POSITION -> Parts.ISOLATION + " position";
    };
  }
}
