package dev.offtake.explain;

import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Style;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Prints a {@link BreakAnswer} in columns of a given width. */
public final class BreakText {
  /** A longer name has a line of its own, so that the columns beside it have room. */
  private static final int WIDEST_NAME = 26;

  private final int width;
  private final Style style;
  private final StringBuilder out = new StringBuilder();

  private BreakText(int width, Style style) {
    this.width = Math.max(60, width);
    this.style = style;
  }

  /**
   * Prints.
   *
   * @param answer what to print
   * @param width columns, 60 or more
   * @param style units
   */
  public static String print(BreakAnswer answer, int width, Style style) {
    BreakText text = new BreakText(width, style);
    text.follows(answer.follows());
    text.changed(answer);
    text.sentences("BACK INTO THE ENGINE", answer.back());
    text.noticed(answer);
    text.sentences("LOOK ALSO", answer.look().stream().map(BreakAnswer.Look::says).toList());
    List<String> headline = new ArrayList<>(List.of(answer.headline()));
    headline.addAll(answer.beside());
    return StateText.print(answer.state(), headline, text.out.toString(), width, style);
  }

  private void follows(List<String> steps) {
    if (!steps.isEmpty()) {
      out.append("WHAT FOLLOWS, ALONG THE AIR\n");
    }
    for (int i = 0; i < steps.size(); i++) {
      wrap(String.format(Locale.ROOT, "%4d  ", i + 1) + steps.get(i), 6);
    }
  }

  private void changed(BreakAnswer answer) {
    if (answer.changed().isEmpty()) {
      return;
    }
    int name =
        Math.min(
            WIDEST_NAME,
            1 + answer.changed().stream().mapToInt(row -> row.name().length()).max().orElse(0));
    out.append(String.format(Locale.ROOT, "%-" + (name + 2) + "s", "CHANGED"));
    out.append(
        String.format(Locale.ROOT, "%8s%8s%8s  %8s%s%n", "healthy", "now", "change", "", "seen"));
    answer.changed().forEach(row -> changed(row, name));
    if (answer.unshown() > 0) {
      out.append("  and ").append(answer.unshown()).append(" more\n");
    }
  }

  private void changed(BreakAnswer.Changed row, int name) {
    boolean alone = row.name().length() >= name;
    if (alone) {
      wrap("  " + row.name(), 4);
    }
    String start = "  " + pad(alone ? "" : row.name(), name);
    String numbers =
        String.format(
            Locale.ROOT,
            "%8s%8s%8s  %-8s",
            number(row, row.healthy()),
            number(row, row.now()),
            change(row),
            unit(row.measures()));
    wrap(start + numbers + row.seen(), start.length() + numbers.length());
  }

  private String number(BreakAnswer.Changed row, double value) {
    return switch (row.measures()) {
      case NUMBER -> value > 0 ? "ON" : "off";
      case SHARE -> String.format(Locale.ROOT, "%.0f", 100 * value);
      default -> style.number(value, row.measures());
    };
  }

  private String change(BreakAnswer.Changed row) {
    double change = row.now() - row.healthy();
    String size =
        switch (row.measures()) {
          case NUMBER -> "";
          case SHARE -> String.format(Locale.ROOT, "%.0f", 100 * Math.abs(change));
          case TEMPERATURE -> style.number(Math.abs(change), Dimension.TEMPERATURE_DIFFERENCE);
          case GAUGE_PRESSURE -> style.number(Math.abs(change), Dimension.PRESSURE_DIFFERENCE);
          default -> style.number(Math.abs(change), row.measures());
        };
    return size.isEmpty() ? "" : (change < 0 ? "-" : "+") + size;
  }

  private String unit(Dimension measures) {
    return switch (measures) {
      case NUMBER -> "";
      case SHARE -> "% open";
      default -> style.unit(measures);
    };
  }

  private void noticed(BreakAnswer answer) {
    List<BreakAnswer.Noticed> rows = answer.noticed();
    if (rows.isEmpty()) {
      return;
    }
    boolean usual = answer.byHand().isEmpty();
    wrap("WHO WOULD NOTICE" + (usual ? "" : ", at each power with " + answer.byHand()), 2);
    int power = 2 + rows.stream().mapToInt(row -> row.power().length()).max().orElse(0);
    int verdict = 2 + rows.stream().mapToInt(row -> row.verdict().length()).max().orElse(0);
    for (BreakAnswer.Noticed row : rows) {
      String start = "  " + pad(row.power(), power) + pad(row.verdict(), verdict);
      wrap(start + row.says(), start.length());
    }
  }

  private void sentences(String label, List<String> says) {
    if (!says.isEmpty()) {
      out.append(label).append('\n');
      says.forEach(sentence -> wrap("  " + sentence, 4));
    }
  }

  private static String pad(String text, int columns) {
    return text.length() >= columns ? text + " " : text + " ".repeat(columns - text.length());
  }

  private void wrap(String text, int hang) {
    out.append(Columns.wrap(text, width, 0, hang));
  }
}
