package dev.offtake.cause;

import dev.offtake.system.Item.Words;
import dev.offtake.system.Problems;
import java.util.ArrayList;
import java.util.List;

/**
 * Cuts a table into cells that know their line: commas between cells, double quotes around a cell
 * that holds a comma, two of them for one inside (RFC 4180, 2005; a cell does not run over lines).
 */
final class CsvTable {
  private CsvTable() {}

  /** Rows of cells, blank lines left out; a quote that is never closed is told. */
  static List<List<Words>> rows(String file, String text, Problems problems) {
    List<List<Words>> rows = new ArrayList<>();
    int line = 0;
    for (String row : text.split("\n", -1)) {
      line++;
      if (!row.isBlank()) {
        rows.add(cells(file, line, row, problems));
      }
    }
    return rows;
  }

  private static List<Words> cells(String file, int line, String row, Problems problems) {
    List<Words> cells = new ArrayList<>();
    StringBuilder cell = new StringBuilder();
    boolean quoted = false;
    for (int i = 0; i < row.length(); i++) {
      char c = row.charAt(i);
      boolean twice = quoted && c == '"' && row.startsWith("\"\"", i);
      if (twice) {
        cell.append(c);
        i++;
      } else if (c == '"' && (quoted || cell.toString().isBlank())) {
        quoted = !quoted;
      } else if (c == ',' && !quoted) {
        cells.add(new Words(file, line, cell.toString().strip()));
        cell.setLength(0);
      } else {
        cell.append(c);
      }
    }
    if (quoted) {
      problems.add(file, line, "A quote is opened and never closed", "Close the quote");
    }
    cells.add(new Words(file, line, cell.toString().strip()));
    return cells;
  }
}
