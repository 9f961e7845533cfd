package dev.offtake.desk.drawing;

import java.util.List;

/** Marks that watch nothing that is drawn, such as a light of a switch: a row under the drawing. */
final class LooseMarks {
  /** Height of the row, px. */
  static final double ROW = 48;

  private static final double APART = 24;

  private final Placed placed;
  private final Svg svg;

  LooseMarks(Placed placed, Svg svg) {
    this.placed = placed;
    this.svg = svg;
  }

  /** Height that rows of loose marks take under a drawing of a width, px. */
  static double height(List<Mark> marks, double width) {
    return marks.isEmpty() ? 0 : ROW * (1 + Math.floor(wide(marks) / width));
  }

  private static double wide(List<Mark> marks) {
    return marks.stream().mapToDouble(mark -> mark.width() + APART).sum();
  }

  void write() {
    List<Mark> marks = placed.plan().loose();
    Places places = new Places(placed, svg);
    double x = APART;
    double y = placed.height() - height(marks, placed.width()) + ROW / 2;
    for (Mark mark : marks) {
      if (x + mark.width() > placed.width() && x > APART) {
        x = APART;
        y += ROW;
      }
      places.mark(mark, x + Mark.ROUND, y, true);
      x += mark.width() + APART;
    }
  }
}
