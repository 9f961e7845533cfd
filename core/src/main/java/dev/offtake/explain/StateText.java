package dev.offtake.explain;

import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Style;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** Prints a {@link StateAnswer} in columns of a given width. */
public final class StateText {
  private static final int LABEL = 14;
  private static final int WIDEST_NAME = 26;
  private static final int WIDEST_WORD = 22;

  /** Differences between two answers below these are not told: what a shop gauge cannot show. */
  private static final double PRESSURE_STEP = 3450;

  private static final double TEMPERATURE_STEP = 3;
  private static final double FLOW_STEP = 0.004;

  private final int width;
  private final Style style;
  private final int name;
  private final StringBuilder out = new StringBuilder();

  private StateText(StateAnswer answer, int width, Style style) {
    this.width = Math.max(60, width);
    this.style = style;
    name = Math.min(WIDEST_NAME, 2 + longest(names(answer)));
  }

  private static Stream<String> names(StateAnswer answer) {
    Stream<String> valves = answer.why().stream().map(StateAnswer.Why::part);
    Stream<String> places = answer.air().stream().map(StateAnswer.Air::name);
    Stream<String> panel = answer.panel().lines().stream().map(Panel.Line::name);
    return Stream.of(valves, places, panel).flatMap(names -> names);
  }

  private static int longest(Stream<String> texts) {
    return texts.mapToInt(String::length).max().orElse(0);
  }

  /**
   * Prints.
   *
   * @param answer what to print
   * @param width columns, 60 or more
   * @param style units
   */
  public static String print(StateAnswer answer, int width, Style style) {
    return print(answer, answer.headline(), "", width, style);
  }

  /**
   * Prints with another headline and with more between it and the rest.
   *
   * @param answer what to print
   * @param headline sentences that stand on top
   * @param more whole lines that follow them; may be empty
   * @param width columns, 60 or more
   * @param style units
   */
  static String print(
      StateAnswer answer, List<String> headline, String more, int width, Style style) {
    StateText text = new StateText(answer, width, style);
    text.head(answer.asked());
    headline.forEach(sentence -> text.wrap(sentence, 2, 2));
    text.out.append('\n').append(more);
    if (answer.solved()) {
      text.body(answer);
    }
    answer.ifCorrected().ifPresent(other -> text.corrected(answer, other));
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
    asked.broken().forEach(fault -> wrap("IF    " + fault, 0, 6));
    asked.warnings().forEach(warning -> wrap("NOTE  " + warning, 0, 6));
    out.append('\n');
  }

  private void body(StateAnswer answer) {
    if (!answer.why().isEmpty()) {
      out.append("WHY\n");
      why(answer.why());
    }
    airHead();
    answer.air().forEach(row -> air(row, row.note()));
    if (!answer.gauges().isEmpty()) {
      wrap(answer.gauges(), 2, 2);
    }
    panel(answer.panel());
    if (!answer.room().isEmpty()) {
      out.append("ROOM LEFT\n");
      answer.room().forEach(r -> wrap("  " + pad(r.name(), name) + r.says(), 0, name + 2));
    }
    if (!answer.memory().isEmpty()) {
      out.append("MEMORY\n");
      answer.memory().forEach(line -> wrap("  " + line, 0, 4));
    }
  }

  private void panel(Panel panel) {
    List<Panel.Line> lines = panel.lines();
    if (!lines.isEmpty()) {
      out.append("GAUGES\n");
      lines.forEach(line -> wrap("  " + pad(line.name(), name) + line.says(), 0, name + 2));
    }
  }

  private void why(List<StateAnswer.Why> rows) {
    int word = Math.min(WIDEST_WORD, 2 + longest(rows.stream().map(StateAnswer.Why::word)));
    for (StateAnswer.Why row : rows) {
      String start = "  " + pad(row.part(), name) + pad(row.word(), word);
      wrap(start + row.because(), 0, name + word + 2);
    }
  }

  private void airHead() {
    String heads =
        String.format(
            Locale.ROOT,
            "%7s%6s%8s",
            style.unit(Dimension.GAUGE_PRESSURE),
            style.unit(Dimension.TEMPERATURE),
            style.unit(Dimension.MASS_FLOW));
    out.append(pad("AIR", name + 2)).append(heads).append('\n');
  }

  private void air(StateAnswer.Air row, String note) {
    String numbers =
        String.format(
            Locale.ROOT,
            "%7s%6s%8s",
            number(row.gaugePressure(), Dimension.GAUGE_PRESSURE),
            number(row.temperature(), Dimension.TEMPERATURE),
            number(row.flow(), Dimension.MASS_FLOW));
    wrap("  " + pad(row.name(), name) + numbers + "  " + note, 0, name + 25);
  }

  private String number(double si, Dimension dimension) {
    return Double.isNaN(si) ? "" : style.number(si, dimension);
  }

  /** Only what differs from the answer above. */
  private void corrected(StateAnswer answer, StateAnswer other) {
    out.append("IF THE ENGINE HOLDS CORRECTED SPEED\n");
    wrap(other.asked().power(), 2, 4);
    if (!other.solved()) {
      other.headline().forEach(sentence -> wrap(sentence, 2, 4));
      return;
    }
    List<String> sentences = new ArrayList<>(other.headline());
    sentences.removeAll(answer.headline());
    sentences.forEach(sentence -> wrap(sentence, 2, 4));
    if (sentences.isEmpty()) {
      wrap("The same taps feed.", 2, 4);
    }
    List<StateAnswer.Why> valves = new ArrayList<>(other.why());
    valves.removeIf(row -> answer.why().stream().anyMatch(was -> sameWord(was, row)));
    why(valves);
    airHead();
    // Sources and users tell enough: they show the pressure of their points.
    List<StateAnswer.Air> rows = new ArrayList<>(other.air());
    rows.removeIf(row -> Double.isNaN(row.flow()));
    for (StateAnswer.Air row : rows) {
      answer.air().stream()
          .filter(was -> was.name().equals(row.name()) && differ(was, row))
          .findFirst()
          .ifPresent(was -> air(row, "against " + shown(was)));
    }
    other.changes().forEach(change -> labelled("  " + change.label(), change.says()));
  }

  private static boolean sameWord(StateAnswer.Why one, StateAnswer.Why two) {
    return one.part().equals(two.part()) && one.word().equals(two.word());
  }

  private static boolean differ(StateAnswer.Air one, StateAnswer.Air two) {
    return Math.abs(one.gaugePressure() - two.gaugePressure()) >= PRESSURE_STEP
        || Math.abs(one.temperature() - two.temperature()) >= TEMPERATURE_STEP
        || Math.abs(one.flow() - two.flow()) >= FLOW_STEP;
  }

  private String shown(StateAnswer.Air row) {
    String pressure = style.print(row.gaugePressure(), Dimension.GAUGE_PRESSURE);
    return pressure + ", " + style.print(row.temperature(), Dimension.TEMPERATURE);
  }

  private void foot(StateAnswer answer) {
    changes(answer);
    if (answer.solved()) {
      labelled("STABILITY", String.join("; ", answer.stability().says()));
    }
    labelled("STANDS ON", answer.asked().standsOn());
    answer.asked().assumes().forEach(says -> wrap(says, LABEL, LABEL));
    labelled("BALANCE", answer.balance());
    labelled("CAUTION", answer.caution());
  }

  private void changes(StateAnswer answer) {
    answer.changes().forEach(change -> labelled(change.label(), change.says()));
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
