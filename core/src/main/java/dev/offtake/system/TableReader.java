package dev.offtake.system;

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

/**
 * Reads {@code columns: [core %, psig, degF, source]} and {@code rows: [[62, 8.1, 188, SD p.4]]}.
 *
 * <p>The last word of a column's name is its unit. Columns stand in the order of the kind; one
 * named {@code source} may stand anywhere.
 */
final class TableReader {
  private static final String SOURCE = "source";

  private final Key key;
  private final List<Dimension> dimensions;
  private final double ambient;
  private final Statements statements;
  private final Context context;

  /** Reads tables of a key, gauge pressures counting from an ambient pressure in Pa. */
  TableReader(Key key, double ambient, Statements statements, Context context) {
    this.key = key;
    this.ambient = ambient;
    this.statements = statements;
    this.context = context;
    dimensions = dimensions(key);
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
    double[] values = new double[dimensions.size()];
    int sourceAt = names.indexOf(SOURCE);
    String source = sourceAt < 0 ? "" : "; " + text(cells.items().get(sourceAt));
    int column = 0;
    for (int i = 0; i < names.size(); i++) {
      if (i != sourceAt) {
        values[column] = cell(names.get(i), cells.items().get(i), column, source, cells);
        column++;
      }
    }
    return values;
  }

  /** A column is named by its unit (`lbf ft`), or by a word and its unit (`core %`). */
  private static String unit(String column, Dimension dimension) {
    boolean whole = Units.find(column, dimension).isPresent();
    return whole ? column : column.substring(column.lastIndexOf(' ') + 1);
  }

  private double cell(String column, Item cell, int number, String source, Listing row) {
    if (!(cell instanceof Words words)) {
      context.problems.add(cell, "A cell of a table is a number, not " + cell.words(), "Write one");
      return Double.NaN;
    }
    boolean bare = words.text().matches("[-+0-9.,eE]*");
    Dimension dimension = dimensions.get(number);
    String unit = unit(column, dimension);
    String read = bare && dimension != Dimension.NUMBER ? words.text() + " " + unit : words.text();
    try {
      Stated stated = QuantityReader.read(read + source, dimension);
      if (number > 0) {
        String name = key.name() + ", " + column + " at " + text(row.items().get(0));
        context.statements.add(statements.statement(name, words, stated, true));
      }
      // Only a column that may hold either is counted from vacuum; a gauge column stays gauge.
      boolean gauge =
          dimension == Dimension.PRESSURE && stated.dimension() == Dimension.GAUGE_PRESSURE;
      return gauge ? stated.nominal() + ambient : stated.nominal();
    } catch (QuantityProblem problem) {
      context.problems.add(cell, problem.wrong(), problem.mend());
      return Double.NaN;
    }
  }

  private static String text(Item item) {
    return item instanceof Words words ? words.text() : "";
  }
}
