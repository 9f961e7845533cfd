package dev.offtake.desk.drawing;

/**
 * Something that only watches, drawn small beside what it watches.
 *
 * @param part number of the part in the system
 * @param needle number of the needle of a gauge; 0 for what has one face only
 * @param symbol name of its symbol
 * @param label short name
 * @param air whether air goes through it, so that room is kept for its flow
 */
record Mark(int part, int needle, String symbol, String label, boolean air) {
  /** Height that a mark takes, px. */
  static final double HEIGHT = 24;

  /** Radius of the round of a gauge, px: a number of three digits fits. */
  static final double ROUND = 15;

  private static final double PEGGED = Face.words("pegged", Face.SMALL);
  private static final double AIR = Face.words("12.0 lb/min", Face.SMALL);

  /** Whether it shows a number in a round. */
  boolean gauge() {
    return symbol.equals("gauge");
  }

  double height() {
    return gauge() ? 2 * ROUND + 4 : HEIGHT;
  }

  double width() {
    return 2 * ROUND
        + 6
        + Math.max(Face.words(label, Face.SMALL), gauge() ? PEGGED : air ? AIR : 0);
  }
}
