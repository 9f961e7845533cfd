package dev.offtake.desk.drawing;

import java.util.List;

/**
 * Symbols around their middle, air coming from below, controls at the right. After ISO 1219-1:2012
 * and ISO 14617-8 (valves: two triangles, tip to tip; check valve: ball on its seat; actuators on a
 * stem) and ISO 14617-10 (compressor: a trapezium), simplified.
 */
final class Symbols {
  private static final String TIES = "M-15 -18H15L0 0ZM-15 18H15L0 0Z";

  /**
   * A stroke of a symbol.
   *
   * @param look class that gives its look: {@code body}, {@code line}, {@code ink}, {@code sense},
   *     {@code open} (shown in proportion to the opening), {@code ball} (lifts with the opening)
   * @param path data
   */
  record Stroke(String look, String path) {}

  private record Size(double half, double halfWidth, double reach) {}

  private Symbols() {}

  /** Half the height along the air, px. */
  static double half(String symbol) {
    return size(symbol).half;
  }

  /** Half the width at the side of the words, px. */
  static double halfWidth(String symbol) {
    return size(symbol).halfWidth;
  }

  /** How far it reaches at the side of its controls, px. */
  static double reach(String symbol) {
    return size(symbol).reach;
  }

  /** Whether air passes it, so that an arrow shows where it leaves to the outside. */
  static boolean passes(String symbol) {
    return switch (symbol) {
      case "shutoff valve", "pressure regulator", "temperature control valve", "relief valve" ->
          true;
      case "check valve", "line", "bend", "orifice", "venturi", "leak", "cooler" -> true;
      default -> false;
    };
  }

  private static Size size(String symbol) {
    return switch (symbol) {
      case "shutoff valve" -> new Size(18, 15, 36);
      case "pressure regulator" -> new Size(18, 15, 34);
      case "temperature control valve" -> new Size(18, 15, 40);
      case "relief valve" -> new Size(18, 15, 36);
      case "check valve" -> new Size(18, 16, 16);
      case "line" -> new Size(13, 10, 10);
      case "bend" -> new Size(14, 12, 12);
      case "orifice", "leak" -> new Size(12, 11, 11);
      case "venturi" -> new Size(16, 10, 10);
      case "exhaust" -> new Size(10, 11, 11);
      case "test point" -> new Size(9, 9, 9);
      case "cooler" -> new Size(22, 22, 22);
      case "tank" -> new Size(17, 12, 12);
      case "motor" -> new Size(16, 16, 25);
      case "compressor tap" -> new Size(11, 22, 22);
      default -> new Size(16, 17, 17);
    };
  }

  /** Strokes of a symbol, those behind first; a plain box for what has none. */
  static List<Stroke> strokes(String symbol) {
    return switch (symbol) {
      case "shutoff valve" -> valve("M0 0H22", "M22 -8H36V8H22Z");
      case "pressure regulator" -> regulator();
      case "temperature control valve" ->
          valve("M0 0H20", circle(30, 0, 10), "M25.5 -4.5H34.5M30 -4.5V5.5");
      case "relief valve" -> valve("M0 0H11l3 -7l5 14l5 -14l5 14l3 -7h4", "");
      case "check valve" -> check();
      case "compressor tap" ->
          List.of(
              new Stroke("line", "M-25 0H-20M20 0H25"),
              new Stroke("body", "M-20 -15L20 -6V6L-20 15Z"));
      case "fan tap" -> fan();
      case "source" ->
          List.of(new Stroke("body", circle(0, 0, 16)), new Stroke("ink", "M-8 -3.5H8L0 -15.5Z"));
      case "user" ->
          List.of(
              new Stroke("body", "M-17 -16H17V16H-17Z"),
              new Stroke("line", "M0 12V-6M-6.5 0.5L0 -7L6.5 0.5"));
      default -> other(symbol);
    };
  }

  private static List<Stroke> other(String symbol) {
    return switch (symbol) {
      case "motor" ->
          List.of(
              new Stroke("line", "M16 -3H25M16 3H25"),
              new Stroke("body", circle(0, 0, 16)),
              new Stroke("ink", "M-8 14H8L0 3Z"));
      case "tank" -> List.of(new Stroke("body", "M-12 -7A12 10 0 0 1 12 -7V7A12 10 0 0 1 -12 7Z"));
      case "cooler" -> cooler();
      case "line" ->
          List.of(
              new Stroke("body", "M-5 -13H5V13H-5Z"), new Stroke("line", "M-10 -13H10M-10 13H10"));
      case "bend" ->
          List.of(
              new Stroke("ground", "M-12 -14H12V14H-12Z"),
              new Stroke("line", "M0 14V8Q0 4 4 4T8 0T4 -4T0 -8V-14M-10 -10V10"));
      case "orifice" ->
          List.of(
              new Stroke("ground", "M-11 -12H11V12H-11Z"),
              new Stroke("line", "M-11 -12Q-3 -5 -3 0T-11 12M11 -12Q3 -5 3 0T11 12"));
      case "venturi" ->
          List.of(
              new Stroke(
                  "body",
                  "M-10 -16C-9 -4 -3.5 -2 -3.5 3C-3.5 7 -8 9 -10 16H10C8 9 3.5 7 3.5 3"
                      + "C3.5 -2 9 -4 10 -16Z"));
      case "leak" ->
          List.of(
              new Stroke(
                  "body", "M0 12L-4 5L-11 6L-6 0L-9 -7L-2 -5L1 -12L4 -5L11 -6L6 1L10 7L3 5Z"));
      case "exhaust" -> List.of(new Stroke("body", "M-11 -10H11L0 10Z"));
      case "test point" ->
          List.of(new Stroke("body", circle(0, 0, 9)), new Stroke("line", "M-5 -5L5 5M-5 5L5 -5"));
      default -> List.of(new Stroke("body", "M-17 -16H17V16H-17Z"));
    };
  }

  private static List<Stroke> valve(String stem, String head) {
    return valve(stem, head, "");
  }

  private static List<Stroke> valve(String stem, String head, String letter) {
    return List.of(
        new Stroke("line", stem),
        new Stroke("body", head),
        new Stroke("line", letter),
        new Stroke("body", TIES),
        new Stroke("open", TIES),
        new Stroke("rim", TIES));
  }

  private static List<Stroke> regulator() {
    return List.of(
        new Stroke("line", "M0 0H22"),
        new Stroke("sense", "M28 -10V-25H3"),
        new Stroke("body", "M22 -12A12 12 0 0 1 22 12Z"),
        new Stroke("body", TIES),
        new Stroke("open", TIES),
        new Stroke("rim", TIES));
  }

  private static List<Stroke> check() {
    return List.of(
        new Stroke("ground", "M-16 -18H16V18H-16Z"),
        new Stroke("open", "M-16 -4H16L0 15Z"),
        new Stroke("line", "M-16 -4L0 15L16 -4M-9 18H9M-9 -18H9"),
        new Stroke("ball", circle(0, -2, 9)));
  }

  private static List<Stroke> fan() {
    return List.of(
        new Stroke("body", circle(0, 0, 16)),
        new Stroke(
            "ink",
            "M0 0C-9 -3 -9 -12 0 -13C3 -9 3 -4 0 0M0 0C7 -6 15 -1 11 6C6 7 3 4 0 0"
                + "M0 0C2 9 -6 13 -11 6C-9 1 -5 0 0 0"));
  }

  private static List<Stroke> cooler() {
    return List.of(
        new Stroke("body", "M-22 -22H22V22H-22Z"),
        new Stroke("sense", "M22 11H-15V-11H22"),
        new Stroke("line", "M0 22V17L-10 12L10 4L-10 -4L10 -12L0 -17V-22"));
  }

  /** Strokes of a mark, within ten pixels around its middle. */
  static List<Stroke> mark(String symbol) {
    return switch (symbol) {
      case "trip" ->
          List.of(
              new Stroke("body", "M0 -10L10 0L0 10L-10 0Z"), new Stroke("line", "M0 -5V1M0 4V5"));
      case "light" ->
          List.of(
              new Stroke("body", circle(0, 0, 9)),
              new Stroke("line", "M-6.4 -6.4L6.4 6.4M-6.4 6.4L6.4 -6.4"));
      case "thermostat" ->
          List.of(new Stroke("body", circle(0, 0, 9)), new Stroke("line", "M-4.5 -4H4.5M0 -4V5"));
      case "sensor" ->
          List.of(
              new Stroke("body", "M-10 -7H10V7H-10Z"), new Stroke("line", "M-7 0Q-3.5 -7 0 0T7 0"));
      case "gauge" -> List.of(new Stroke("body", circle(0, 0, Mark.ROUND)));
      case "leak", "exhaust" -> strokes(symbol);
      default -> List.of(new Stroke("body", "M-8 -8H8V8H-8Z"));
    };
  }

  private static String circle(double x, double y, double r) {
    String arc = "a" + r + " " + r + " 0 1 0 ";
    return "M" + (x - r) + " " + y + arc + 2 * r + " 0" + arc + -2 * r + " 0Z";
  }
}
