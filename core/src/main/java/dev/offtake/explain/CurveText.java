package dev.offtake.explain;

import dev.offtake.quantity.Style;
import dev.offtake.study.Curve;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;

/** Prints curves as tables with the events between the rows. */
public final class CurveText {
  private static final int LABEL = 14;

  /** An event whose range is narrower than this share of the sweep is printed without it. */
  private static final double NARROW = 2e-3;

  private final int width;
  private final Style style;
  private final StringBuilder out = new StringBuilder();

  private CurveText(int width, Style style) {
    this.width = Math.max(60, width);
    this.style = style;
  }

  /**
   * Prints.
   *
   * @param answers one or more of the same system over the same quantity
   * @param width columns, 60 or more
   * @param style units
   */
  public static String print(List<CurveAnswer> answers, int width, Style style) {
    CurveText text = new CurveText(width, style);
    Asked asked = answers.get(0).asked();
    text.out.append(asked.title().toUpperCase(Locale.ROOT)).append('\n');
    if (!asked.about().isEmpty()) {
      text.wrap(asked.about(), 0, 0);
    }
    for (int i = 0; i < answers.size(); i++) {
      if (i + 1 < answers.size() && answers.get(i + 1).broken()) {
        new CurvePairText(text, style, answers.get(i), answers.get(++i)).print();
      } else {
        text.curve(answers.get(i));
      }
    }
    text.labelled("STANDS ON", asked.standsOn());
    text.labelled("CAUTION", StateAnswer.CAUTION);
    return text.out.toString();
  }

  private void curve(CurveAnswer answer) {
    Curve curve = answer.curve();
    head(answer);
    List<String> sentences = sentences(curve);
    sentences.forEach(sentence -> wrap(sentence, 2, 2));
    if (!sentences.isEmpty()) {
      out.append('\n');
    }
    table(curve, curve.up(), rising(curve), curve.remembers() ? "GOING UP" : "");
    wayDown(curve, "");
    ranges(List.of(curve));
    out.append('\n');
  }

  /** What was asked, and what is to be known before the answer. */
  void head(CurveAnswer answer) {
    wrap(answer.conditions(), 0, 0);
    answer.asked().broken().forEach(fault -> wrap("IF    " + fault, 0, 6));
    answer.asked().warnings().forEach(warning -> wrap("NOTE  " + warning, 0, 6));
    out.append('\n');
  }

  /** The table of the way down, where it is another way. */
  void wayDown(Curve curve, String whose) {
    if (curve.remembers()) {
      out.append('\n');
      String title = whose + "GOING DOWN, WHERE IT IS ANOTHER WAY";
      table(curve, falling(curve), falls(curve), title);
    }
  }

  /** What must be said before the table. */
  static List<String> sentences(Curve curve) {
    Axis axis = Axis.of(curve.sweep());
    List<String> sentences = new ArrayList<>();
    for (Curve.Gap gap : curve.gaps()) {
      String over = curve.sweep().name() + " ";
      sentences.add("NO ANSWER at " + over + where(axis, gap) + ": " + gap.why() + ".");
    }
    if (curve.remembers()) {
      List<String> up = told(curve, Curve.Way.UP);
      List<String> down = told(curve, Curve.Way.DOWN);
      sentences.add(
          "The way down is not the way up. Only going up: "
              + (up.isEmpty() ? "nothing" : String.join("; ", up))
              + ". Only going down: "
              + (down.isEmpty() ? "nothing, it stays so" : String.join("; ", down))
              + ".");
    }
    return sentences;
  }

  /** Where there is no answer: a value, or from one to another. */
  public static String where(Axis axis, Curve.Gap gap) {
    String from = axis.number(gap.from());
    return from.equals(axis.number(gap.to()))
        ? axis.print(gap.to())
        : from + " to " + axis.print(gap.to());
  }

  private static List<String> told(Curve curve, Curve.Way way) {
    Axis axis = Axis.of(curve.sweep());
    return curve.events().stream()
        .filter(event -> event.way() == way)
        .map(event -> "at " + axis.print(event.x()) + " " + ChangeWords.of(event))
        .toList();
  }

  private static List<Curve.Event> rising(Curve curve) {
    return curve.events().stream().filter(e -> e.way() != Curve.Way.DOWN).toList();
  }

  private static List<Curve.Event> falls(Curve curve) {
    List<Curve.Event> events =
        new ArrayList<>(curve.events().stream().filter(e -> e.way() == Curve.Way.DOWN).toList());
    events.sort(Comparator.comparingDouble((Curve.Event e) -> -e.x()));
    return events;
  }

  /** Rows of the way down that differ, in the order in which they are met. */
  private List<Curve.Row> falling(Curve curve) {
    List<Curve.Row> rows = new ArrayList<>();
    for (int i = curve.down().size() - 1; i >= 0; i--) {
      Curve.Row down = curve.down().get(i);
      boolean same =
          curve.up().stream().anyMatch(up -> up.x() == down.x() && printed(curve, up, down));
      if (!same) {
        rows.add(down);
      }
    }
    return rows;
  }

  private boolean printed(Curve curve, Curve.Row one, Curve.Row two) {
    CurveTable table = new CurveTable(curve, style);
    return table.cells(one).equals(table.cells(two));
  }

  private void table(Curve curve, List<Curve.Row> rows, List<Curve.Event> events, String title) {
    CurveTable table = new CurveTable(curve, style);
    if (!title.isEmpty()) {
      out.append(title).append('\n');
    }
    boolean first = true;
    for (List<Integer> columns : table.chunks(width)) {
      out.append(first ? "" : "\n");
      table.heads(columns).forEach(line -> out.append(line).append('\n'));
      lines(curve, table, columns, shown(curve, rows), first ? events : List.of());
      first = false;
    }
  }

  private void lines(
      Curve curve,
      CurveTable table,
      List<Integer> columns,
      List<Curve.Row> rows,
      List<Curve.Event> events) {
    boolean falling = rows.size() > 1 && rows.get(0).x() > rows.get(1).x();
    int next = 0;
    for (Curve.Row row : rows) {
      while (next < events.size()
          && (events.get(next).x() > row.x()) == falling
          && events.get(next).x() != row.x()) {
        event(curve, events.get(next++));
      }
      out.append(table.line(row, columns)).append('\n');
    }
    while (next < events.size()) {
      event(curve, events.get(next++));
    }
  }

  private void event(Curve curve, Curve.Event event) {
    wrap("> " + where(curve, event) + "  " + ChangeWords.of(event), 2, 6);
  }

  /** Where an event is, with its range where it has one. */
  public static String where(Curve curve, Curve.Event event) {
    Axis axis = Axis.of(curve.sweep());
    String at = axis.number(event.x());
    return event.high() - event.low() < NARROW * curve.sweep().length()
        ? at
        : at + " (" + axis.number(event.low()) + " to " + axis.number(event.high()) + ")";
  }

  /** All rows of a short curve, else those at round values and at the edges of answers. */
  static List<Curve.Row> shown(Curve curve, List<Curve.Row> rows) {
    if (curve.sweep().stops().size() <= Stops.FEW) {
      return rows;
    }
    TreeSet<Double> round =
        new TreeSet<>(Stops.round(curve.sweep().from(), curve.sweep().to(), curve.sweep().unit()));
    List<Curve.Row> shown = new ArrayList<>();
    for (Curve.Row row : rows) {
      boolean edge = row.answered() && !curve.sweep().stops().contains(row.x());
      if (round.contains(row.x()) || edge) {
        shown.add(row);
      }
    }
    return shown;
  }

  /** What the brackets mean and what moves the events most. */
  void ranges(List<Curve> curves) {
    List<String> most =
        curves.stream()
            .flatMap(curve -> curve.events().stream())
            .filter(event -> !event.causes().isEmpty())
            .map(event -> event.causes().get(0))
            .map(cause -> cause.part() + ", " + cause.parameter())
            .distinct()
            .toList();
    if (!most.isEmpty()) {
      out.append('\n');
      wrap(
          "In brackets: where tolerances and the curves of taps between their points may put it."
              + " What moves most: "
              + String.join("; ", Together.of(most))
              + ".",
          2,
          2);
    }
  }

  private void labelled(String label, String says) {
    wrap(label + " ".repeat(LABEL - label.length()) + says, 0, LABEL);
  }

  /** Columns of the page. */
  int width() {
    return width;
  }

  /** A line as it is. */
  void line(String line) {
    out.append(line).append('\n');
  }

  void wrap(String text, int indent, int hang) {
    out.append(Columns.wrap(text, width, indent, hang));
  }
}
