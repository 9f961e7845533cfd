package dev.offtake.explain;

import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Style;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Prints a {@link StateAnswer} in columns of a given width. */
public final class StateText {
  private static final int LABEL = 14;
  private static final int NAME = 24;

  private final int width;
  private final Style style;
  private final StringBuilder out = new StringBuilder();

  private StateText(int width, Style style) {
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
  public static String print(StateAnswer answer, int width, Style style) {
    StateText text = new StateText(width, style);
    text.head(answer.asked());
    answer.headline().forEach(sentence -> text.wrap(sentence, 2, 2));
    text.out.append('\n');
    if (answer.solved()) {
      text.body(answer);
    }
    text.foot(answer);
    return text.out.toString();
  }

  private void head(Asked asked) {
    out.append(asked.title().toUpperCase(Locale.ROOT)).append('\n');
    if (!asked.about().isEmpty()) {
      wrap(asked.about(), 0, 0);
    }
    List<String> parts = new ArrayList<>(List.of(asked.power(), asked.day(), asked.lineUp()));
    parts.removeIf(String::isEmpty);
    wrap(String.join(" | ", parts), 0, 0);
    asked.warnings().forEach(warning -> wrap("NOTE  " + warning, 0, 6));
    out.append('\n');
  }

  private void body(StateAnswer answer) {
    if (!answer.why().isEmpty()) {
      out.append("WHY\n");
      for (StateAnswer.Why row : answer.why()) {
        String start = "  " + pad(row.part(), NAME) + pad(row.word(), 16);
        wrap(start + row.because(), 0, NAME + 18);
      }
    }
    air(answer.air());
    section("ROOM LEFT", answer.room().stream().map(r -> pad(r.name(), NAME) + r.says()).toList());
    section("MEMORY", answer.memory());
  }

  private void air(List<StateAnswer.Air> rows) {
    String heads =
        String.format(
            Locale.ROOT,
            "%7s%6s%8s",
            style.unit(Dimension.GAUGE_PRESSURE),
            style.unit(Dimension.TEMPERATURE),
            style.unit(Dimension.MASS_FLOW));
    out.append(pad("AIR", NAME + 2)).append(heads).append('\n');
    for (StateAnswer.Air row : rows) {
      String numbers =
          String.format(
              Locale.ROOT,
              "%7s%6s%8s",
              number(row.gaugePressure(), Dimension.GAUGE_PRESSURE),
              number(row.temperature(), Dimension.TEMPERATURE),
              number(row.flow(), Dimension.MASS_FLOW));
      wrap("  " + pad(row.name(), NAME) + numbers + "  " + row.note(), 0, NAME + 25);
    }
  }

  private String number(double si, Dimension dimension) {
    return Double.isNaN(si) ? "" : style.number(si, dimension);
  }

  private void section(String label, List<String> lines) {
    if (!lines.isEmpty()) {
      out.append(label).append('\n');
      lines.forEach(line -> wrap("  " + line, 0, 4));
    }
  }

  private void foot(StateAnswer answer) {
    labelled("NEXT CHANGE", answer.nextChange());
    if (answer.solved()) {
      labelled("STABILITY", String.join("; ", answer.stability().says()));
    }
    labelled("STANDS ON", answer.asked().standsOn());
    labelled("BALANCE", answer.balance());
    labelled("CAUTION", answer.caution());
  }

  private void labelled(String label, String says) {
    if (!says.isEmpty()) {
      wrap(pad(label, LABEL) + says, 0, LABEL);
    }
  }

  private static String pad(String text, int columns) {
    return text.length() >= columns ? text + " " : text + " ".repeat(columns - text.length());
  }

  private void wrap(String text, int indent, int hang) {
    out.append(Columns.wrap(text, width, indent, hang));
  }
}
