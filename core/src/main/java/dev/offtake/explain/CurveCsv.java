package dev.offtake.explain;

import dev.offtake.quantity.Style;
import dev.offtake.study.Column;
import dev.offtake.study.Curve;
import dev.offtake.study.Feeders;
import java.util.ArrayList;
import java.util.List;

/**
 * Curves as comma-separated values (RFC 4180): a block of states, an empty line, a block of events.
 * With something broken each line says in its second cell with which faults it is, empty for the
 * healthy system, and a third block tells who would notice where. Units stand in the heads; a state
 * without an answer has empty cells and its trouble in the last.
 */
public final class CurveCsv {
  private final Style style;
  private final boolean compares;
  private final Csv out = new Csv();

  private CurveCsv(Style style, boolean compares) {
    this.style = style;
    this.compares = compares;
  }

  /**
   * Makes the text.
   *
   * @param answers one or more of the same system over the same quantity
   * @param style units
   */
  public static String print(List<CurveAnswer> answers, Style style) {
    CurveCsv csv = new CurveCsv(style, answers.stream().anyMatch(CurveAnswer::broken));
    csv.heads(answers.get(0).curve());
    for (CurveAnswer answer : answers) {
      csv.rows(answer, answer.curve().up(), "up");
      csv.rows(answer, answer.curve().down(), "down");
    }
    csv.out.line(List.of());
    String over = over(answers.get(0).curve());
    csv.out.line(csv.head("event at " + over, "low", "high", "way", "what happens"));
    answers.forEach(csv::events);
    if (csv.compares) {
      csv.out.line(List.of());
      csv.out.line(csv.head("from " + over, "to", "who would notice", "what shows"));
      answers.forEach(csv::noticed);
    }
    return csv.out.text();
  }

  private static String over(Curve curve) {
    return (curve.sweep().name() + " " + curve.sweep().unit().symbol()).strip();
  }

  private List<String> head(String... more) {
    List<String> cells = new ArrayList<>(compares ? List.of("day", "if") : List.of("day"));
    cells.addAll(List.of(more));
    return cells;
  }

  /** The first cells of a line: the day, and what is broken. */
  private List<String> start(CurveAnswer answer, String... more) {
    List<String> cells = new ArrayList<>(List.of(answer.dayName()));
    if (compares) {
      cells.add(String.join("; ", answer.asked().broken()));
    }
    cells.addAll(List.of(more));
    return cells;
  }

  private void heads(Curve curve) {
    List<String> cells = head("way", over(curve));
    for (Column column : curve.columns()) {
      cells.add((column.name() + " " + style.unit(column.dimension())).strip());
    }
    for (Feeders group : curve.feeders()) {
      cells.add((group.side() + " fed by").strip());
    }
    cells.add("trouble");
    out.line(cells);
  }

  private void rows(CurveAnswer answer, List<Curve.Row> rows, String way) {
    Curve curve = answer.curve();
    CurveTable table = new CurveTable(curve, style);
    Axis axis = Axis.of(curve.sweep());
    for (Curve.Row row : rows) {
      List<String> cells = start(answer, way, axis.shortest(row.x()));
      List<String> own = table.cells(row);
      for (int i = 1; i <= curve.columns().size() + curve.feeders().size(); i++) {
        cells.add(row.answered() ? own.get(i) : "");
      }
      cells.add(row.trouble());
      out.line(cells);
    }
  }

  private void events(CurveAnswer answer) {
    Axis axis = Axis.of(answer.curve().sweep());
    for (Curve.Event event : answer.curve().events()) {
      out.line(
          start(
              answer,
              axis.shortest(event.x()),
              axis.shortest(event.low()),
              axis.shortest(event.high()),
              CurveJson.way(event),
              ChangeWords.of(event)));
    }
  }

  private void noticed(CurveAnswer answer) {
    Axis axis = Axis.of(answer.curve().sweep());
    for (CurveAnswer.Noticed stretch : answer.noticed()) {
      out.line(
          start(
              answer,
              axis.shortest(stretch.from()),
              axis.shortest(stretch.to()),
              stretch.verdict(),
              stretch.told(axis)));
    }
  }
}
