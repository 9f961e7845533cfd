package dev.offtake.explain;

import dev.offtake.quantity.Style;
import dev.offtake.study.Column;
import dev.offtake.study.Curve;
import dev.offtake.study.Feeders;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A curve as columns of text: heads of a few lines, then a line for each row. */
final class CurveTable {
  private static final List<String> MEASURES =
      List.of(" pressure", " temperature", " flow", " opening");

  private final Curve curve;
  private final Style style;
  private final Axis axis;
  private final List<Head> heads;

  /**
   * Head of a column.
   *
   * @param side first line; may be empty
   * @param words further lines
   * @param unit last line
   */
  record Head(String side, List<String> words, String unit, int width) {}

  CurveTable(Curve curve, Style style) {
    this.curve = curve;
    this.style = style;
    axis = Axis.of(curve.sweep());
    heads = new ArrayList<>();
    heads.add(head("", over(curve.sweep().name()), curve.sweep().unit().symbol(), 6));
    List<String> sides = curve.feeders().stream().map(Feeders::side).toList();
    for (Column column : curve.columns()) {
      heads.add(columnHead(column, sides));
    }
    for (Feeders group : curve.feeders()) {
      heads.add(head(group.side(), List.of("fed by"), "", longest(group)));
    }
  }

  /** The same curve under other heads. */
  CurveTable(CurveTable other, List<Head> heads) {
    curve = other.curve;
    style = other.style;
    axis = other.axis;
    this.heads = List.copyOf(heads);
  }

  /** Heads of all columns. */
  List<Head> heads() {
    return heads;
  }

  /** A long name stands in the line above the table. */
  private static List<String> over(String name) {
    List<String> words = List.of(name.split(" ", -1));
    return words.size() > 2 ? words.subList(words.size() - 1, words.size()) : words;
  }

  private Head columnHead(Column column, List<String> sides) {
    String name = column.name();
    String side = "";
    for (String known : sides) {
      if (!known.isEmpty() && name.startsWith(known + " ")) {
        side = known;
        name = name.substring(known.length() + 1);
      }
    }
    for (String measure : MEASURES) {
      if (name.endsWith(measure)) {
        name = name.substring(0, name.length() - measure.length());
      }
    }
    return head(side, List.of(name.split(" ", -1)), style.unit(column.dimension()), 6);
  }

  static Head head(String side, List<String> words, String unit, int least) {
    int width = Math.max(least, Math.max(side.length(), unit.length()));
    for (String word : words) {
      width = Math.max(width, word.length());
    }
    return new Head(side, words, unit, width);
  }

  private static int longest(Feeders group) {
    return group.names().stream().mapToInt(name -> brief(group, name).length()).max().orElse(0);
  }

  /** A source without its side, and without "tap", which all of them are. */
  static String brief(Feeders group, String name) {
    String side = group.side();
    String own = side.isEmpty() ? name : name.substring(side.length() + 1);
    return own.endsWith(" tap") ? own.substring(0, own.length() - 4) : own;
  }

  /** Columns that fit into a width, in as many blocks as it takes; the first is in each. */
  List<List<Integer>> chunks(int width) {
    List<List<Integer>> chunks = new ArrayList<>();
    List<Integer> chunk = new ArrayList<>(List.of(0));
    int used = first();
    String side = "";
    for (int i : order()) {
      int more = 2 + heads.get(i).width();
      boolean turns = !heads.get(i).side().equals(side);
      side = heads.get(i).side();
      // A side is not torn apart where it would fit alone.
      boolean torn = turns && used + wide(side) > width && first() + wide(side) <= width;
      if ((torn || used + more > width) && chunk.size() > 1) {
        chunks.add(chunk);
        chunk = new ArrayList<>(List.of(0));
        used = first();
      }
      chunk.add(i);
      used += more;
    }
    chunks.add(chunk);
    return chunks;
  }

  private int first() {
    return heads.get(0).width();
  }

  /** Width of all columns of a side, with the gaps before them. */
  private int wide(String side) {
    return heads.stream()
        .skip(1)
        .filter(head -> head.side().equals(side))
        .mapToInt(head -> 2 + head.width())
        .sum();
  }

  /** Columns of a side beside each other, who feeds it last. */
  private List<Integer> order() {
    List<Integer> order = new ArrayList<>();
    List<Integer> left = new ArrayList<>();
    for (int i = 1; i < heads.size(); i++) {
      left.add(i);
    }
    while (!left.isEmpty()) {
      String side = heads.get(left.get(0)).side();
      for (int i : List.copyOf(left)) {
        if (heads.get(i).side().equals(side)) {
          order.add(i);
          left.remove(Integer.valueOf(i));
        }
      }
    }
    return order;
  }

  /** Lines of the heads above some columns. */
  List<String> heads(List<Integer> columns) {
    int deep = columns.stream().mapToInt(i -> heads.get(i).words().size()).max().orElse(1);
    List<String> lines = new ArrayList<>();
    if (columns.stream().anyMatch(i -> !heads.get(i).side().isEmpty())) {
      lines.add(sides(columns));
    }
    for (int line = 0; line < deep; line++) {
      List<String> cells = new ArrayList<>();
      for (int i : columns) {
        List<String> words = heads.get(i).words();
        int word = line - (deep - words.size());
        cells.add(word < 0 ? "" : words.get(word));
      }
      lines.add(join(cells, columns));
    }
    lines.add(join(columns.stream().map(i -> heads.get(i).unit()).toList(), columns));
    return lines;
  }

  private String sides(List<Integer> columns) {
    List<String> cells = new ArrayList<>();
    String last = "";
    for (int i : columns) {
      String side = heads.get(i).side();
      cells.add(side.equals(last) ? "" : side.toUpperCase(Locale.ROOT));
      last = side;
    }
    return join(cells, columns);
  }

  /** Texts of a row, the value of the quantity first. */
  List<String> cells(Curve.Row row) {
    List<String> cells = new ArrayList<>();
    cells.add(axis.number(row.x()));
    for (int i = 0; i < row.values().size(); i++) {
      cells.add(style.number(row.values().get(i), curve.columns().get(i).dimension()));
    }
    for (int i = 0; i < row.feeding().size(); i++) {
      Feeders group = curve.feeders().get(i);
      List<String> names = row.feeding().get(i).stream().map(name -> brief(group, name)).toList();
      cells.add(names.isEmpty() ? "none" : String.join("+", names));
    }
    return cells;
  }

  /** A row in some columns. */
  String line(Curve.Row row, List<Integer> columns) {
    List<String> cells = cells(row);
    if (!row.answered()) {
      return join(List.of(cells.get(0)), columns) + "  no answer";
    }
    return join(columns.stream().map(cells::get).toList(), columns);
  }

  /** Cells beside each other. */
  String join(List<String> cells, List<Integer> columns) {
    StringBuilder line = new StringBuilder();
    for (int k = 0; k < cells.size(); k++) {
      int width = heads.get(columns.get(k)).width();
      String gap = k == 0 ? "" : "  ";
      line.append(gap).append(" ".repeat(Math.max(0, width - cells.get(k).length())));
      line.append(cells.get(k));
    }
    return line.toString().stripTrailing();
  }
}
