package dev.offtake.explain;

import java.util.List;

/** Lines of comma-separated values (RFC 4180). */
final class Csv {
  private final StringBuilder out = new StringBuilder();

  /** Adds a line. */
  void line(List<String> cells) {
    out.append(String.join(",", cells.stream().map(Csv::quoted).toList())).append("\r\n");
  }

  private static String quoted(String cell) {
    boolean plain = cell.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
    return plain ? cell : "\"" + cell.replace("\"", "\"\"") + "\"";
  }

  /** All lines. */
  String text() {
    return out.toString();
  }
}
