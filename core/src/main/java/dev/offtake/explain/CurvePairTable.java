package dev.offtake.explain;

import dev.offtake.quantity.Style;
import dev.offtake.study.Curve;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A healthy curve and a broken one as one table: two columns beside each other where they differ,
 * one column where all rows print the same.
 */
final class CurvePairTable {
  /** Stands where there is no answer. */
  private static final String NONE = "-";

  /** Stands above a column that both have in common. */
  private static final String BOTH = "both";

  private final CurveTable one;
  private final CurveTable two;
  private final CurveTable both;
  private final List<Row> rows = new ArrayList<>();
  private final List<Source> sources = new ArrayList<>();

  /** Rows at one value. */
  record Row(Curve.Row healthy, Curve.Row now) {
    double x() {
      return healthy.x();
    }
  }

  /** Where the cells of a column come from: number of the column, and whether of the broken one. */
  private record Source(int column, boolean now) {}

  CurvePairTable(Curve healthy, Curve now, Style style) {
    one = new CurveTable(healthy, style);
    two = new CurveTable(now, style);
    rows(healthy, now);
    List<CurveTable.Head> heads = new ArrayList<>();
    for (int i = 0; i < one.heads().size(); i++) {
      CurveTable.Head head = one.heads().get(i);
      if (i == 0) {
        add(heads, head, new Source(i, false));
      } else if (same(i)) {
        add(heads, marked(head, BOTH), new Source(i, false));
      } else {
        add(heads, marked(head, "healthy"), new Source(i, false));
        add(heads, marked(head, "now"), new Source(i, true));
      }
    }
    both = new CurveTable(one, heads);
  }

  private void rows(Curve healthy, Curve now) {
    Map<Double, Curve.Row> broken = new HashMap<>();
    now.up().forEach(row -> broken.put(row.x(), row));
    for (Curve.Row row : CurveText.shown(healthy, healthy.up())) {
      Curve.Row other = broken.get(row.x());
      if (other != null) {
        rows.add(new Row(row, other));
      }
    }
  }

  private void add(List<CurveTable.Head> heads, CurveTable.Head head, Source source) {
    heads.add(head);
    sources.add(source);
  }

  private static CurveTable.Head marked(CurveTable.Head head, String mark) {
    List<String> words = new ArrayList<>(head.words());
    words.add(mark);
    return CurveTable.head(head.side(), words, head.unit(), head.width());
  }

  private boolean same(int column) {
    return rows.stream()
        .allMatch(row -> cell(one, row.healthy(), column).equals(cell(two, row.now(), column)));
  }

  private static String cell(CurveTable table, Curve.Row row, int column) {
    return row.answered() || (column == 0) ? table.cells(row).get(column) : NONE;
  }

  /** Rows of values that both have and that are shown, by rising value. */
  List<Row> rows() {
    return rows;
  }

  /** Whether nothing differs in some columns, the first of which is the quantity that moves. */
  boolean same(List<Integer> columns) {
    return columns.stream().skip(1).allMatch(i -> both.heads().get(i).words().contains(BOTH));
  }

  /** Columns that fit into a width, as {@link CurveTable#chunks}. */
  List<List<Integer>> chunks(int width) {
    return both.chunks(width);
  }

  /** Lines of the heads above some columns. */
  List<String> heads(List<Integer> columns) {
    return both.heads(columns);
  }

  /** A row in some columns. */
  String line(Row row, List<Integer> columns) {
    List<String> cells = new ArrayList<>();
    for (int column : columns) {
      Source source = sources.get(column);
      cells.add(
          source.now()
              ? cell(two, row.now(), source.column())
              : cell(one, row.healthy(), source.column()));
    }
    return both.join(cells, columns);
  }
}
