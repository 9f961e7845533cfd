package dev.offtake.system;

import dev.offtake.part.Conditions;
import dev.offtake.part.Key;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.QuantityReader;
import dev.offtake.quantity.Stated;
import dev.offtake.quantity.Units;
import dev.offtake.system.Item.Entry;
import dev.offtake.system.Item.Listing;
import dev.offtake.system.Item.Section;
import dev.offtake.system.Item.Words;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads {@code columns: [core %, psig, degF, source]} and {@code rows: [[62, 8.1, 188, SD p.4]]}.
 *
 * <p>The last word of a column's name is its unit. Columns stand in the order of the kind; one
 * named {@code source} may stand anywhere.
 */
final class TableReader {
  private static final String SOURCE = "source";
  private static final Pattern BARE = Pattern.compile("[-+0-9.,eE]*");
  private static final Pattern RANGE =
      Pattern.compile("(?:unknown )?([-+]?[0-9.,]*[0-9] *(?:\\.\\.| to ) *[-+]?[0-9.,]+)");

  private final Key key;
  private final List<Dimension> dimensions;
  private final Conditions day;

  /** The column that says at what a row holds: speed, or the flow beside a supply's pressure. */
  private final int over;

  private final Statements statements;
  private final Context context;

  /** Reads tables of a key, gauge pressures counting from the ambient of a day. */
  TableReader(Key key, Conditions day, Statements statements, Context context) {
    this.key = key;
    this.day = day;
    this.statements = statements;
    this.context = context;
    dimensions = dimensions(key);
    over = dimensions.get(0) == Dimension.GAUGE_PRESSURE ? 1 : 0;
  }

  /** Dimensions of the columns that a kind wants. */
  static List<Dimension> dimensions(Key key) {
    List<Dimension> all = new ArrayList<>();
    for (String choice : key.choices()) {
      Arrays.stream(Dimension.values()).filter(d -> d.name().equals(choice)).forEach(all::add);
    }
    if (all.isEmpty()) {
      all.add(key.dimension() == null ? Dimension.NUMBER : key.dimension());
      all.add(key.second() == null ? Dimension.NUMBER : key.second());
    }
    return all;
  }

  List<double[]> read(Item item) {
    if (!(item instanceof Section table)
        || !(value(table, "columns") instanceof Listing columns)
        || !(value(table, "rows") instanceof Listing rows)) {
      String mend = "Write it as in `" + key.example() + "`";
      context.problems.add(item, "A table needs `columns` and `rows`", mend);
      return List.of();
    }
    for (Entry line : table.entries().values()) {
      if (!List.of("columns", "rows").contains(line.name().text())) {
        String wrong = "A table has no line `" + line.name().text() + "`";
        String mend = Hint.of(line.name().text(), List.of("columns", "rows"));
        context.problems.add(line.name(), wrong, mend);
      }
    }
    return rows(columns, rows);
  }

  private static Item value(Section table, String name) {
    Entry entry = table.entries().get(name);
    return entry == null ? table : entry.value();
  }

  private List<double[]> rows(Listing columns, Listing rows) {
    List<String> names = columns.items().stream().map(TableReader::text).toList();
    long values = names.stream().filter(name -> !name.equals(SOURCE)).count();
    if (values != dimensions.size()) {
      String wanted = String.join(", ", dimensions.stream().map(Dimension::words).toList());
      String wrong = "The table has " + values + " columns of values and needs " + wanted;
      context.problems.add(columns, wrong, "Write it as in `" + key.example() + "`");
      return List.of();
    }
    List<double[]> read = new ArrayList<>();
    for (Item row : rows.items()) {
      if (row instanceof Listing cells && cells.items().size() == names.size()) {
        read.add(row(names, cells));
      } else {
        String wrong = "A row needs " + names.size() + " cells, one for each column";
        context.problems.add(row, wrong, "Write `[" + String.join(", ", names) + "]`");
      }
    }
    return read;
  }

  private double[] row(List<String> names, Listing cells) {
    int sourceAt = names.indexOf(SOURCE);
    String source = sourceAt < 0 ? "" : "; " + text(cells.items().get(sourceAt));
    List<String> columns = new ArrayList<>(names);
    List<Item> values = new ArrayList<>(cells.items());
    if (sourceAt >= 0) {
      columns.remove(sourceAt);
      values.remove(sourceAt);
    }
    String at = " at " + text(values.get(over));
    List<Stated> row = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      row.add(cell(columns.get(i), values.get(i), i, source, at));
    }
    CompressionDoubt.ask(row, day, cells, context.doubts);
    double[] si = new double[row.size()];
    for (int i = 0; i < si.length; i++) {
      si[i] = value(row.get(i), dimensions.get(i));
    }
    return si;
  }

  /** A column is named by its unit (`lbf ft`), or by a word and its unit (`core %`). */
  private static String unit(String column, Dimension dimension) {
    boolean whole = Units.find(column, dimension).isPresent();
    return whole ? column : column.substring(column.lastIndexOf(' ') + 1);
  }

  private Stated cell(String column, Item cell, int number, String source, String at) {
    Dimension dimension = dimensions.get(number);
    if (!(cell instanceof Words words)) {
      context.problems.add(cell, "A cell of a table is a number, not " + cell.words(), "Write one");
      return Stated.of(Double.NaN, dimension);
    }
    try {
      String written = written(words.text(), number, unit(column, dimension), dimension);
      Stated stated = QuantityReader.read(written + source, dimension);
      if (number != over) {
        String name = key.name() + ", " + column + at;
        context.statements.add(statements.statement(name, words, stated, true));
      }
      return stated;
    } catch (QuantityProblem problem) {
      context.problems.add(cell, problem.wrong(), problem.mend());
      return Stated.of(Double.NaN, dimension);
    }
  }

  /**
   * A cell with the unit of its column. A range in a cell ({@code 20..30}) is one that nobody knows
   * better, as a table's healthy spread is a number of its own.
   */
  private String written(String cell, int number, String unit, Dimension dimension)
      throws QuantityProblem {
    Matcher range = RANGE.matcher(cell);
    boolean bare = BARE.matcher(cell).matches() || range.matches();
    if (range.matches() && number == over) {
      throw new QuantityProblem(
          "a row holds at one value and not over the range " + cell,
          "write one value, such as the middle");
    }
    String text = range.matches() ? "unknown " + range.group(1) : cell;
    return bare && dimension != Dimension.NUMBER ? text + " " + unit : text;
  }

  /**
   * The value of a cell in SI. In a column that may hold either pressure it is counted from vacuum;
   * a gauge column stays gauge.
   */
  private double value(Stated cell, Dimension column) {
    boolean gauge = column == Dimension.PRESSURE && cell.dimension() == Dimension.GAUGE_PRESSURE;
    return gauge ? cell.nominal() + day.ambientP() : cell.nominal();
  }

  private static String text(Item item) {
    return item instanceof Words words ? words.text() : "";
  }
}
