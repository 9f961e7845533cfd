package dev.offtake.desk.drawing;

import java.util.List;

/** Writes points, parts and their marks. */
final class Places {
  private final Placed placed;
  private final Svg svg;

  Places(Placed placed, Svg svg) {
    this.placed = placed;
    this.svg = svg;
  }

  /** Id of a point's element. */
  static String point(int number) {
    return "dr-point-" + number;
  }

  /** Id of a part's element; gauges have one for each needle. */
  static String part(int number, int needle) {
    return "dr-part-" + number + (needle == 0 ? "" : "-" + needle);
  }

  /** Writes a box, then what watches it. */
  void box(int number) {
    Box box = placed.plan().boxes().get(number);
    double axis = placed.axis(number);
    double middle = placed.middle(number);
    hang(box, axis, middle);
    svg.open(
        "g",
        "id",
        box.point() ? point(box.number()) : part(box.number(), 0),
        "class",
        box.point() ? "place point" : "place part",
        "data-name",
        box.name(),
        "role",
        "button",
        "tabindex",
        "-1",
        "aria-label",
        box.name(),
        "transform",
        "translate(" + Num.of(axis) + " " + Num.of(middle) + ")");
    touch(box);
    if (box.point()) {
      svg.leaf("circle", "class", "dot", "r", "6.5");
    } else {
      symbol(box);
    }
    words(box);
    svg.close();
    marks(box, axis, middle);
  }

  /** What a finger meets, and the hatched edge of a limit. */
  private void touch(Box box) {
    double near = box.halfWidth() + Box.GAP / 2;
    double left = -box.axis();
    double width = box.width();
    if (box.beside()) {
      left = box.wordsLeft() ? -box.axis() : -box.reach() - 4;
      width = box.wordsLeft() ? box.axis() + box.reach() + 4 : box.width() - box.axis() - left;
    } else if (!box.marks().isEmpty()) {
      left = -Math.max(near, box.words() / 2);
      width = -2 * left;
    }
    String x = Num.of(left);
    String y = Num.of(-box.middle());
    String w = Num.of(width);
    String h = Num.of(box.height());
    svg.leaf("rect", "class", "touch", "x", x, "y", y, "width", w, "height", h, "rx", "6");
    svg.leaf("rect", "class", "hatch", "x", x, "y", y, "width", w, "height", h, "rx", "6");
  }

  private void symbol(Box box) {
    String turn = box.form() == Box.Form.ACROSS ? "rotate(90)" : "";
    String mirror = box.wordsLeft() || !box.beside() ? "" : "scale(-1 1)";
    svg.open("g", "class", "symbol");
    if (!turn.isEmpty() || !mirror.isEmpty()) {
      svg.attribute("transform", turn + mirror);
    }
    strokes(Symbols.strokes(box.symbol()));
    if (box.exits()) {
      svg.leaf("path", "class", "line exit", "d", exit(-box.half()));
    }
    svg.close();
    sideExits(box);
  }

  private static String exit(double from) {
    return "M0 " + Num.of(from) + "v-13m-5 6l5 -7l5 7";
  }

  /** Legs that leave to the outside at the side. */
  private void sideExits(Box box) {
    for (int leg = 1; leg <= box.ins(); leg++) {
      if (!wired(box, leg)) {
        double sign = box.wordsLeft() ? 1 : -1;
        double y = box.meetY(Wire.Port.SIDE_OUT, leg) - box.middle();
        String at = "translate(" + Num.of(sign * box.halfWidth()) + " " + Num.of(y) + ")";
        String turned = at + " rotate(" + (sign > 0 ? 90 : -90) + ")";
        svg.leaf("path", "class", "line exit", "transform", turned, "d", exit(0));
      }
    }
  }

  private boolean wired(Box box, int leg) {
    return placed.plan().wires().stream()
        .anyMatch(
            w ->
                w.leg() == leg
                    && w.port() == Wire.Port.SIDE_OUT
                    && placed.plan().boxes().get(w.part()).name().equals(box.name()));
  }

  private void strokes(List<Symbols.Stroke> strokes) {
    for (Symbols.Stroke stroke : strokes) {
      if (!stroke.path().isEmpty()) {
        svg.leaf("path", "class", stroke.look(), "d", stroke.path());
      }
    }
  }

  private void words(Box box) {
    boolean beside = box.beside();
    double x = beside ? box.halfWidth() + Box.GAP : 0;
    x = box.wordsLeft() ? -x : x;
    String anchor = !beside ? "middle" : box.wordsLeft() ? "end" : "start";
    double y = beside ? -box.tall() / 2 : -box.middle();
    String at = Num.of(x);
    for (String line : box.lines()) {
      y += Face.LINE;
      line("name", at, y - 4, anchor, line);
    }
    y += Face.LINE;
    value(box, at, y - 4, anchor);
    if (box.point()) {
      line("warmth number", at, y + Face.LINE - 4, anchor, "");
    }
  }

  /** What a place does or shows, and the same of a healthy system where it differs. */
  private void value(Box box, String x, double y, String anchor) {
    String look = box.point() ? "value number" : "value";
    svg.open("text", "class", look, "x", x, "y", Num.of(y), "text-anchor", anchor);
    svg.leaf("tspan", "class", "now").leaf("tspan", "class", "was").close();
  }

  private void line(String look, String x, double y, String anchor, String text) {
    svg.open("text", "class", look, "x", x, "y", Num.of(y), "text-anchor", anchor);
    svg.text(text).close();
  }

  /** Where the marks of a box begin, seen from its symbol, px. */
  private static double start(Box box) {
    double along = box.form() == Box.Form.ACROSS ? box.half() : box.reach();
    return along + Box.GAP + Mark.ROUND;
  }

  private static double sign(Box box) {
    return box.wordsLeft() || !box.beside() ? 1 : -1;
  }

  private static double top(Box box) {
    return -box.marks().stream().mapToDouble(Mark::height).sum() / 2;
  }

  /** The thin line by which marks hang on what they watch. */
  private void hang(Box box, double axis, double middle) {
    double y = middle + top(box);
    double x = axis + sign(box) * start(box);
    for (Mark mark : box.marks()) {
      double at = y + mark.height() / 2;
      String d = "M" + Num.of(axis) + " " + Num.of(middle) + "L" + Num.of(x) + " " + Num.of(at);
      svg.leaf("path", "class", "hang", "d", d);
      y += mark.height();
    }
  }

  private void marks(Box box, double axis, double middle) {
    double y = middle + top(box);
    for (Mark mark : box.marks()) {
      mark(mark, axis + sign(box) * start(box), y + mark.height() / 2, sign(box) > 0);
      y += mark.height();
    }
  }

  /** Writes a mark around a place. */
  void mark(Mark mark, double x, double y, boolean wordsRight) {
    String look = "place part mark" + (mark.gauge() ? " gauge" : "");
    svg.open("g", "id", part(mark.part(), mark.needle()), "class", look, "role", "button")
        .attribute("data-name", placed.plan().partNames().get(mark.part()))
        .attribute("tabindex", "-1")
        .attribute("aria-label", mark.label())
        .attribute("transform", "translate(" + Num.of(x) + " " + Num.of(y) + ")");
    double half = mark.height() / 2;
    double left = wordsRight ? -Mark.ROUND : Mark.ROUND - mark.width();
    svg.leaf(
        "rect",
        "class",
        "touch",
        "x",
        Num.of(left),
        "y",
        Num.of(-half),
        "width",
        Num.of(mark.width()),
        "height",
        Num.of(2 * half),
        "rx",
        "6");
    strokes(Symbols.mark(mark.symbol()));
    if (mark.gauge()) {
      line("number reads", "0", 4.5, "middle", "");
    }
    String away = Num.of((wordsRight ? 1 : -1) * (Mark.ROUND + 4));
    line("label", away, 4.5, wordsRight ? "start" : "end", mark.label());
    svg.close();
  }
}
