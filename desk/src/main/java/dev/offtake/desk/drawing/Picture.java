package dev.offtake.desk.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Writes what is placed as SVG. Things that change with a state carry an id or a number. */
final class Picture {
  /** Least length of pipe that has room for an arrow, and for ticks as well, px. */
  private static final double ARROW = 16;

  private static final double TICKS = 44;

  private final Placed placed;
  private final List<Piece> pieces;
  private final Svg svg = new Svg();

  private Picture(Placed placed, List<Piece> pieces) {
    this.placed = placed;
    this.pieces = pieces;
  }

  /** The SVG. */
  static String of(Placed placed, List<Piece> pieces) {
    Picture picture = new Picture(placed, pieces);
    picture.write();
    return picture.svg.written();
  }

  private void write() {
    String view = "0 0 " + Num.of(placed.width()) + " " + Num.of(placed.height());
    svg.root()
        .attribute("class", "drawing")
        .attribute("viewBox", view)
        .attribute("role", "group")
        .attribute("aria-label", "Drawing of " + placed.plan().title());
    defs();
    svg.open("g", "class", "view");
    pipes();
    List<Integer> order = order();
    Places places = new Places(placed, svg);
    svg.open("g", "class", "places");
    order.forEach(places::box);
    new LooseMarks(placed, svg).write();
    svg.close();
    svg.leaf("g", "class", "tags");
    svg.close().close();
  }

  private void defs() {
    svg.open("defs")
        .open(
            "pattern",
            "id",
            "dr-hatch",
            "class",
            "hatching",
            "width",
            "6",
            "height",
            "6",
            "patternUnits",
            "userSpaceOnUse")
        .leaf("path", "d", "M-1 7L7 -1M-1 1L1 -1M5 7L7 5")
        .close()
        .close();
  }

  /** From left to right, and within a column along the air: from below upwards. */
  private List<Integer> order() {
    List<Integer> order =
        new ArrayList<>(IntStream.range(0, placed.plan().boxes().size()).boxed().toList());
    order.sort(
        Comparator.comparing((Integer i) -> placed.plan().boxes().get(i).column())
            .thenComparing(i -> -Math.round(placed.middle(i) / 8))
            .thenComparing(i -> Math.round(placed.axis(i))));
    return order;
  }

  private void pipes() {
    svg.open("g", "class", "pipes", "aria-hidden", "true");
    int from = 0;
    while (from < pieces.size()) {
      int to = from;
      while (to < pieces.size() && pieces.get(to).point() == pieces.get(from).point()) {
        to++;
      }
      tree(from, to);
      from = to;
    }
    svg.close();
  }

  /** One point's pipes: a clear edge against what they cross, then the casing, then the air. */
  private void tree(int from, int to) {
    svg.open("g", "class", "tree");
    for (String layer : List.of("clear", "casing", "air", "dash")) {
      for (int i = from; i < to; i++) {
        svg.leaf("path", "class", layer, "data-piece", "" + i, "d", pieces.get(i).path());
      }
    }
    for (int i = from; i < to; i++) {
      signs(i);
    }
    svg.close();
  }

  private void signs(int i) {
    Piece piece = pieces.get(i);
    int stretch = piece.longest();
    double length = piece.length(stretch);
    if (length >= TICKS) {
      String at = piece.turned(stretch, 0.32);
      svg.leaf("path", "class", "ticks", "data-piece", "" + i, "transform", at, "d", "");
    }
    if (length >= ARROW) {
      String at = piece.turned(stretch, length >= TICKS ? 0.7 : 0.5);
      svg.leaf("path", "class", "arrow", "data-piece", "" + i, "transform", at, "d", "");
    }
  }
}
