package dev.offtake.explain;

import dev.offtake.quantity.Style;
import dev.offtake.study.Column;
import dev.offtake.study.Curve;
import dev.offtake.study.Feeders;
import java.util.ArrayList;
import java.util.List;

/**
 * Curves as comma-separated values (RFC 4180): a block of states, an empty line, a block of events.
 * Units stand in the heads; a state without an answer has empty cells and its trouble in the last.
 */
public final class CurveCsv {
  private final Style style;
  private final Csv out = new Csv();

  private CurveCsv(Style style) {
    this.style = style;
  }

  /**
   * Makes the text.
   *
   * @param answers one or more of the same system over the same quantity
   * @param style units
   */
  public static String print(List<CurveAnswer> answers, Style style) {
    CurveCsv csv = new CurveCsv(style);
    csv.heads(answers.get(0).curve());
    for (CurveAnswer answer : answers) {
      csv.rows(answer, answer.curve().up(), "up");
      csv.rows(answer, answer.curve().down(), "down");
    }
    csv.out.line(List.of());
    String over = over(answers.get(0).curve());
    csv.out.line(List.of("day", "event at " + over, "low", "high", "way", "what happens"));
    answers.forEach(csv::events);
    return csv.out.text();
  }

  private static String over(Curve curve) {
    return (curve.sweep().name() + " " + curve.sweep().unit().symbol()).strip();
  }

  private void heads(Curve curve) {
    List<String> cells = new ArrayList<>(List.of("day", "way", over(curve)));
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
      List<String> cells = new ArrayList<>(List.of(answer.dayName(), way));
      cells.add(axis.shortest(row.x()));
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
          List.of(
              answer.dayName(),
              axis.shortest(event.x()),
              axis.shortest(event.low()),
              axis.shortest(event.high()),
              CurveJson.way(event),
              ChangeWords.of(event)));
    }
  }
}
