package dev.offtake.explain;

import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Style;
import dev.offtake.study.Column;
import dev.offtake.study.Curve;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A profile that was played as comma-separated values (RFC 4180): a block of values over time, an
 * empty line, a block of what happened. Units stand in the heads.
 */
public final class PlayCsv {
  private PlayCsv() {}

  /**
   * Makes the text.
   *
   * @param answer what was played
   * @param style units
   */
  public static String print(PlayAnswer answer, Style style) {
    Csv out = new Csv();
    Curve curve = answer.curve().curve();
    List<String> heads = new ArrayList<>(List.of("time s"));
    for (Column column : curve.columns()) {
      heads.add((column.name() + " " + style.unit(column.dimension())).strip());
    }
    out.line(heads);
    for (Curve.Row row : curve.up()) {
      out.line(cells(row, curve.columns(), style));
    }
    out.line(List.of());
    out.line(List.of("event at s", "done or came", "what happens"));
    for (PlayAnswer.Told told : answer.story()) {
      String at = String.format(Locale.ROOT, "%.3f", told.at());
      out.line(List.of(at, told.done() ? "done" : "came", told.says()));
    }
    return out.text();
  }

  private static List<String> cells(Curve.Row row, List<Column> columns, Style style) {
    List<String> cells = new ArrayList<>();
    cells.add(String.format(Locale.ROOT, "%.3f", row.x()));
    for (int i = 0; i < row.values().size(); i++) {
      Dimension dimension = columns.get(i).dimension();
      cells.add(style.number(row.values().get(i), dimension));
    }
    return cells;
  }
}
