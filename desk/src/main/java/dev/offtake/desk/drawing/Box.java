package dev.offtake.desk.drawing;

import java.util.List;

/**
 * A place on the drawing with room for its symbol, its words and its marks.
 *
 * @param point whether it is a point, else a part
 * @param number of the point in the network or of the part in the system
 * @param name full name
 * @param side name of its side; empty for what lies between sides
 * @param column where it stands from left to right
 * @param lines short name, broken into lines
 * @param symbol name of its symbol; {@link #ZONE_SYMBOL} or empty for a point
 * @param form how symbol and words stand
 * @param ins how many legs come in at its side
 * @param marks what watches it
 */
record Box(
    boolean point,
    int number,
    String name,
    String side,
    Column column,
    List<String> lines,
    String symbol,
    Form form,
    int ins,
    List<Mark> marks) {
  /** From left to right. */
  enum Column {
    LEFT,
    MIDDLE,
    RIGHT
  }

  /** How symbol and words stand. */
  enum Form {
    /** Air passes upwards, words stand beside it. */
    BESIDE,
    /** Nothing goes on: words stand above. */
    TOP,
    /** Air passes from left to right, words stand above. */
    ACROSS
  }

  /** Room between things, px. */
  static final double GAP = 6;

  /** Widest line of words above a symbol, and beside one, px. */
  static final double WRAP_ABOVE = 88;

  static final double WRAP_BESIDE = 100;

  /** Room kept for what a part does and for what a point shows, px. */
  static final double DOES = 96;

  private static final double TAKES = 78;

  /** What a point that is a zone has for a symbol. */
  static final String ZONE_SYMBOL = "zone";

  private static final double ZONE = Face.numbers("103 psig", Face.VALUE);
  private static final double SHOWS =
      Face.numbers("103 psig", Face.VALUE) + Face.words(" (was 103)", Face.SMALL);

  /** Room for an arrow to the outside, px. */
  static final double EXIT = 18;

  private static final double APRON = 10;

  /** Keeps its lists. */
  Box {
    lines = List.copyOf(lines);
    marks = List.copyOf(marks);
  }

  /** The same in another column. */
  Box in(Column other) {
    return new Box(point, number, name, side, other, lines, symbol, form, ins, marks);
  }

  /** The same with marks. */
  Box with(List<Mark> other) {
    return new Box(point, number, name, side, column, lines, symbol, form, ins, other);
  }

  /** Whether its words stand left of its symbol, so that the sides mirror each other. */
  boolean wordsLeft() {
    return column == Column.LEFT;
  }

  /** Half the height of the symbol along the air, px. */
  double half() {
    return point ? 0 : Symbols.half(symbol);
  }

  /** Half the width of the symbol, px. */
  double halfWidth() {
    return point ? 9 : Symbols.halfWidth(symbol);
  }

  /** Width of the words, px. */
  double words() {
    double room = point ? symbol.isEmpty() ? SHOWS : ZONE : form == Form.TOP ? TAKES : DOES;
    return Math.max(room, Face.widest(lines, Face.NAME)) + GAP;
  }

  /** Height of the words, px. */
  double tall() {
    return Face.LINE * (lines.size() + (point ? 2 : 1));
  }

  private double marksWide() {
    return marks.stream().mapToDouble(Mark::width).max().orElse(0);
  }

  private double marksTall() {
    return marks.stream().mapToDouble(Mark::height).sum();
  }

  /** How far the symbol reaches away from the words, px. */
  double reach() {
    return point ? 9 : Symbols.reach(symbol);
  }

  /** Room beside the symbol away from the words, px. */
  double inner() {
    double own = reach() - halfWidth() + 4;
    return own + Math.max(marks.isEmpty() ? 0 : marksWide() + GAP, ins > 0 ? EXIT : 0);
  }

  /** Whether an arrow above the symbol shows that its air goes outside. */
  boolean exits() {
    return form == Form.TOP && Symbols.passes(symbol);
  }

  private double exit() {
    return exits() ? EXIT : 0;
  }

  double width() {
    return switch (form) {
      case BESIDE -> words() + 2 * halfWidth() + GAP + inner();
      case TOP -> Math.max(words(), 2 * (reach() + (marks.isEmpty() ? 2 : GAP + marksWide())));
      case ACROSS -> Math.max(words(), 2 * (half() + EXIT + marksWide())) + 2 * APRON;
    };
  }

  double height() {
    double symbol = 2 * half();
    return switch (form) {
      case BESIDE -> Math.max(Math.max(tall(), symbol + 8), marksTall());
      case TOP -> tall() + GAP + exit() + symbol + 2;
      case ACROSS -> tall() + GAP + halfWidth() + reach() + 2;
    };
  }

  /** Whether words stand beside the symbol, else above it. */
  boolean beside() {
    return form == Form.BESIDE;
  }

  /** Where the air passes, from the left edge, px. */
  double axis() {
    if (!beside()) {
      return width() / 2;
    }
    double outer = words() + GAP + halfWidth();
    return wordsLeft() ? outer : width() - outer;
  }

  /** Middle of the symbol, from the upper edge, px. */
  double middle() {
    return switch (form) {
      case BESIDE -> height() / 2;
      case TOP -> tall() + GAP + exit() + half();
      case ACROSS -> tall() + GAP + halfWidth();
    };
  }

  /** Where a pipe meets the edge of the box, from its left edge, px. */
  double portX(Wire.Port port) {
    return switch (port) {
      case BELOW, ABOVE -> axis();
      case SIDE_IN, SIDE_OUT -> axis() + (wordsLeft() ? 1 : -1) * (reach() + EXIT - 4);
      case LEFT -> APRON;
      case RIGHT -> width() - APRON;
    };
  }

  /** Where a pipe meets the edge of the box, from its upper edge, px. */
  double portY(Wire.Port port) {
    return switch (port) {
      case BELOW, SIDE_IN, LEFT, RIGHT -> height();
      case ABOVE, SIDE_OUT -> 0;
    };
  }

  /** Where a pipe meets the symbol, from the upper edge, px. */
  double meetY(Wire.Port port, int leg) {
    double apart = half() * 0.5 / Math.max(1, leg);
    return switch (port) {
      case BELOW -> middle() + half();
      case ABOVE -> middle() - half();
      case SIDE_IN -> middle() + apart;
      case SIDE_OUT -> middle() - apart;
      case LEFT, RIGHT -> middle();
    };
  }

  /** Where a pipe meets the symbol, from the left edge, px. */
  double meetX(Wire.Port port) {
    return switch (port) {
      case BELOW, ABOVE -> axis();
      case SIDE_IN, SIDE_OUT -> axis() + (wordsLeft() ? 1 : -1) * halfWidth();
      case LEFT -> axis() - half();
      case RIGHT -> axis() + half();
    };
  }
}
