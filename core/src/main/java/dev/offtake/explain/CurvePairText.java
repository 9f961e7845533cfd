package dev.offtake.explain;

import dev.offtake.quantity.Style;
import dev.offtake.study.Curve;
import java.util.ArrayList;
import java.util.List;

/**
 * Prints a healthy curve and a broken one in one table, with what happens in each between the rows
 * and who would notice below.
 */
final class CurvePairText {
  private final CurveText text;
  private final Style style;
  private final CurveAnswer healthy;
  private final CurveAnswer now;
  private final Axis axis;

  CurvePairText(CurveText text, Style style, CurveAnswer healthy, CurveAnswer now) {
    this.text = text;
    this.style = style;
    this.healthy = healthy;
    this.now = now;
    axis = Axis.of(healthy.curve().sweep());
  }

  void print() {
    text.head(now);
    List<String> sentences = new ArrayList<>();
    CurveText.sentences(healthy.curve()).forEach(says -> sentences.add("Healthy: " + says));
    CurveText.sentences(now.curve()).forEach(says -> sentences.add("Now: " + says));
    sentences.forEach(sentence -> text.wrap(sentence, 2, 2));
    if (!sentences.isEmpty()) {
      text.line("");
    }
    table();
    text.wayDown(healthy.curve(), "HEALTHY, ");
    text.wayDown(now.curve(), "NOW, ");
    text.ranges(List.of(healthy.curve(), now.curve()));
    noticed();
    text.line("");
  }

  private void table() {
    if (healthy.curve().remembers() || now.curve().remembers()) {
      text.line("GOING UP");
    }
    CurvePairTable table = new CurvePairTable(healthy.curve(), now.curve(), style);
    boolean first = true;
    for (List<Integer> columns : table.chunks(text.width())) {
      if (!first) {
        text.line("");
      }
      if (table.same(columns)) {
        text.line("THE SAME HEALTHY AND NOW");
      }
      table.heads(columns).forEach(text::line);
      lines(table, columns, first);
      first = false;
    }
  }

  private void lines(CurvePairTable table, List<Integer> columns, boolean events) {
    List<PairEvents.Marked> left =
        new ArrayList<>(events ? PairEvents.of(healthy.curve(), now.curve()) : List.of());
    left.removeIf(marked -> marked.event().way() == Curve.Way.DOWN);
    for (CurvePairTable.Row row : table.rows()) {
      left = events(left, row.x());
      text.line(table.line(row, columns));
    }
    events(left, Double.POSITIVE_INFINITY);
  }

  /** Prints the events below a value; returns those that are left. */
  private List<PairEvents.Marked> events(List<PairEvents.Marked> events, double below) {
    List<PairEvents.Marked> left = new ArrayList<>();
    for (PairEvents.Marked marked : events) {
      if (marked.event().x() < below) {
        String whose = marked.whose().isEmpty() ? "" : marked.whose() + ": ";
        String where = CurveText.where(healthy.curve(), marked.event());
        text.wrap("> " + where + "  " + whose + ChangeWords.of(marked.event()), 2, 6);
      } else {
        left.add(marked);
      }
    }
    return left;
  }

  private void noticed() {
    text.line("");
    text.line("WHO WOULD NOTICE");
    int where = 0;
    int verdict = 0;
    for (CurveAnswer.Noticed stretch : now.noticed()) {
      where = Math.max(where, stretch.where(axis).length());
      verdict = Math.max(verdict, stretch.verdict().length());
    }
    for (CurveAnswer.Noticed stretch : now.noticed()) {
      String start =
          "  " + pad(stretch.where(axis), where + 2) + pad(stretch.verdict(), verdict + 2);
      text.wrap(start + stretch.told(axis), 0, start.length());
    }
    if (healthy.curve().remembers() || now.curve().remembers()) {
      text.wrap("Compared on the way up only.", 2, 2);
    }
  }

  private static String pad(String words, int columns) {
    return words + " ".repeat(Math.max(0, columns - words.length()));
  }
}
