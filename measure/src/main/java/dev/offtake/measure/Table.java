package dev.offtake.measure;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Prints rows as the tables of docs/performance.md. */
final class Table {
  private static final String SIZE = "points";

  /** The largest growth that is aimed at. */
  static final double EXPONENT = 1.15;

  private Table() {}

  /** All tables: one for each group, growth by size. */
  static String print(Collection<Row> rows) {
    double dense =
        rows.stream()
            .filter(row -> row.name().equals("denseLu"))
            .mapToDouble(Row::ratio)
            .findFirst()
            .orElse(Double.NaN);
    Map<String, List<Row>> groups =
        rows.stream()
            .collect(Collectors.groupingBy(Row::group, LinkedHashMap::new, Collectors.toList()));
    StringBuilder text = new StringBuilder();
    groups.forEach(
        (group, own) -> {
          text.append("\n### ").append(group).append("\n\n");
          text.append(group.equals("Growth") ? growth(own) : plain(own, dense));
        });
    return text.toString();
  }

  private static String plain(List<Row> rows, double dense) {
    StringBuilder text = new StringBuilder();
    line(
        text, List.of("what", "µs", "per second", "× yardstick", "× dense LU", "bytes", "counted"));
    line(text, List.of("---", "--:", "--:", "--:", "--:", "--:", "---"));
    for (Row row : rows) {
      line(
          text,
          List.of(
              named(row),
              number(row.nanos() / 1e3),
              rounded(1e9 / row.nanos()),
              number(row.ratio()),
              number(row.ratio() / dense),
              bytes(row.bytes()),
              counted(row)));
    }
    return text.toString();
  }

  private static String named(Row row) {
    return row.name()
        + row.parameters().values().stream()
            .map(value -> " " + value.toLowerCase(Locale.ROOT).replace('_', ' '))
            .collect(Collectors.joining(","));
  }

  private static String counted(Row row) {
    return row.counts().entrySet().stream()
        .map(entry -> words(entry.getKey()) + " " + number(entry.getValue()))
        .collect(Collectors.joining(", "));
  }

  /** The words of a name in camel case. */
  private static String words(String name) {
    return name.replaceAll("([A-Z])", " $1").toLowerCase(Locale.ROOT);
  }

  private static String growth(List<Row> rows) {
    Map<String, TreeMap<Integer, Row>> byName = new LinkedHashMap<>();
    for (Row row : rows) {
      int size = Integer.parseInt(row.parameters().getOrDefault(SIZE, "0"));
      byName.computeIfAbsent(row.name(), name -> new TreeMap<>()).put(size, row);
    }
    List<Integer> sizes =
        rows.stream()
            .map(row -> Integer.parseInt(row.parameters().getOrDefault(SIZE, "0")))
            .distinct()
            .sorted()
            .toList();
    StringBuilder text = new StringBuilder();
    List<String> head = new ArrayList<>(List.of("what"));
    List<String> rule = new ArrayList<>(List.of("---"));
    for (int i = 0; i < sizes.size(); i++) {
      head.add("µs at " + sizes.get(i));
      rule.add("--:");
      if (i > 0) {
        head.add("N to the");
        rule.add("--:");
      }
    }
    head.add("counted");
    rule.add("---");
    line(text, head);
    line(text, rule);
    byName.forEach((name, own) -> line(text, growthCells(name, own, sizes)));
    return text.toString();
  }

  private static List<String> growthCells(
      String name, NavigableMap<Integer, Row> own, List<Integer> sizes) {
    List<String> cells = new ArrayList<>(List.of(name));
    for (int i = 0; i < sizes.size(); i++) {
      Row row = own.get(sizes.get(i));
      cells.add(row == null ? "" : number(row.nanos() / 1e3));
      if (i > 0) {
        Row before = own.get(sizes.get(i - 1));
        cells.add(row == null || before == null ? "" : exponent(before, row));
      }
    }
    cells.add(own.isEmpty() ? "" : counted(own.lastEntry().getValue()));
    return cells;
  }

  /** Exponent of the number of points between two sizes, by ratios to the yardstick. */
  private static String exponent(Row small, Row large) {
    double sizes =
        Double.parseDouble(large.parameters().getOrDefault(SIZE, "0"))
            / Double.parseDouble(small.parameters().getOrDefault(SIZE, "0"));
    double exponent = Math.log(large.ratio() / small.ratio()) / Math.log(sizes);
    return String.format(Locale.ROOT, "%.2f", exponent) + (exponent > EXPONENT ? " !" : "");
  }

  private static void line(StringBuilder text, List<String> cells) {
    text.append("| ").append(String.join(" | ", cells)).append(" |\n");
  }

  /** Three digits. */
  static String number(double value) {
    if (Double.isNaN(value)) {
      return "";
    }
    if (value == 0) {
      return "0";
    }
    int digits = (int) Math.max(0, 2 - Math.floor(Math.log10(Math.abs(value))));
    return digits == 0
        ? rounded(value)
        : String.format(Locale.ROOT, "%." + Math.min(digits, 6) + "f", value);
  }

  private static String rounded(double value) {
    return Double.isNaN(value) ? "" : String.format(Locale.ROOT, "%,.0f", value);
  }

  /** JMH's own iterations allocate a little, which is no byte for an operation. */
  private static String bytes(double value) {
    return Double.isNaN(value) ? "" : rounded(value);
  }
}
