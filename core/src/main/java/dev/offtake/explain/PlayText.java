package dev.offtake.explain;

import dev.offtake.profile.Shortage;
import dev.offtake.profile.Watch;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Style;
import dev.offtake.study.Curve;
import dev.offtake.time.Cycle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Prints the story of a profile. */
public final class PlayText {
  /** Columns of a time in the story. */
  private static final int CLOCK = 8;

  /** Columns kept free for two sources that feed one side. */
  private static final int JOINED = 4;

  private static final int INDENT = CLOCK + 6;

  private final PlayAnswer answer;
  private final Style style;
  private final Sheet sheet;

  private PlayText(PlayAnswer answer, int width, Style style) {
    this.answer = answer;
    this.style = style;
    sheet = new Sheet(width);
  }

  /**
   * Prints.
   *
   * @param answer what is told
   * @param width columns, 60 or more
   * @param style units
   */
  public static String print(PlayAnswer answer, int width, Style style) {
    PlayText text = new PlayText(answer, width, style);
    text.head();
    if (answer.story().isEmpty() && !answer.done()) {
      text.sheet.line("NO ANSWER: " + answer.trouble() + ".", 2, 2);
    } else {
      text.body();
    }
    text.foot();
    return text.sheet.toString();
  }

  private void head() {
    String title = answer.asked().title().toUpperCase(Locale.ROOT);
    String what = answer.profile().title().toUpperCase(Locale.ROOT);
    sheet.line(what.isEmpty() ? title : title + "   " + what, 0, 0);
    for (String about : List.of(answer.asked().about(), answer.profile().about())) {
      if (!about.isEmpty() && !(about.equals(answer.asked().about()) && same())) {
        sheet.line(about, 0, 0);
      }
    }
    List<String> parts =
        new ArrayList<>(
            List.of(
                "begins at " + answer.asked().power(),
                answer.asked().day(),
                answer.asked().lineUp()));
    parts.removeIf(String::isEmpty);
    sheet.line(String.join(" | ", parts), 0, 0);
    answer.asked().broken().forEach(fault -> sheet.line("IF    " + fault, 0, 6));
    answer.asked().warnings().forEach(warning -> sheet.line("NOTE  " + warning, 0, 6));
    sheet.blank();
  }

  private boolean same() {
    return answer.profile().about().equals(answer.asked().about());
  }

  private void body() {
    answer.headline().forEach(says -> sheet.line(says, 2, 2));
    sheet.blank();
    story();
    limits();
    shortages();
    hunts();
    values();
    answer.bleed().ifPresent(bleed -> BleedText.write(bleed, sheet, style));
    if (!answer.end().isEmpty()) {
      sheet.labelled("AT THE END", String.join("; ", answer.end()));
    }
  }

  private void story() {
    sheet.line("WHAT HAPPENS", 0, 0);
    for (PlayAnswer.Told told : answer.story()) {
      String clock = Durations.clock(told.at());
      String mark = told.done() ? " s  > " : " s    ";
      String start = " ".repeat(Math.max(0, CLOCK - clock.length())) + clock + mark;
      sheet.line(start + told.says(), 0, INDENT);
    }
    sheet.blank();
  }

  private void limits() {
    // What was nearest to its limit as it began has only moved away since.
    List<Watch.Seen> moved = answer.limits().stream().filter(LimitWords::moved).toList();
    if (moved.isEmpty()) {
      return;
    }
    sheet.line("LIMITS", 0, 0);
    for (List<Watch.Seen> alike : LimitWords.alike(moved, answer.asked().sides())) {
      String who =
          String.join(", ", Together.of(alike.stream().map(seen -> seen.watch().part()).toList()));
      sheet.line("  " + who + ": " + saw(LimitWords.nearest(alike)), 0, INDENT);
    }
    sheet.blank();
  }

  private String saw(Watch.Seen seen) {
    Watch watch = seen.watch();
    String says =
        watch.what()
            + (watch.upwards() ? " at most " : " at least ")
            + value(watch, seen.most())
            + " at "
            + Durations.clock(seen.at())
            + " s, ";
    Dimension gap =
        watch.temperature() ? Dimension.TEMPERATURE_DIFFERENCE : Dimension.PRESSURE_DIFFERENCE;
    String room = style.print(Math.abs(seen.room()), gap);
    String limit = "its " + value(watch, watch.limit());
    if (seen.room() >= 0) {
      return says + room + (watch.upwards() ? " under " : " over ") + limit;
    }
    String enough =
        PlayHeadline.passed(seen)
            ? ""
            : ", not long enough to " + (watch.stated() ? "count" : "act");
    String beyond = watch.upwards() ? " OVER " : " UNDER ";
    String lasted = " for " + Durations.of(seen.beyond()) + enough;
    return says + room + beyond + limit + lasted;
  }

  private String value(Watch watch, double si) {
    return LimitWords.value(watch, si, answer.profile().start().day().pressure(), style);
  }

  private void shortages() {
    if (answer.shortages().isEmpty()) {
      return;
    }
    sheet.line("SHORT OF AIR", 0, 0);
    for (Shortage one : answer.shortages()) {
      sheet.line("  " + one.user() + ": " + lacked(one), 0, INDENT);
    }
    sheet.blank();
  }

  private String lacked(Shortage one) {
    String end = one.lasts() ? "the end" : Durations.clock(one.until()) + " s";
    String took =
        Double.isNaN(one.wanted())
            ? "takes " + style.print(one.flow(), Dimension.MASS_FLOW)
            : "takes "
                + style.number(one.flow(), Dimension.MASS_FLOW)
                + " of "
                + style.print(one.wanted(), Dimension.MASS_FLOW);
    double above = one.pressure() - answer.profile().start().day().pressure();
    return Durations.clock(one.from())
        + " s to "
        + end
        + " ("
        + Durations.of(one.seconds())
        + "); at worst, at "
        + Durations.clock(one.worst())
        + " s, it "
        + took
        + " from "
        + one.point()
        + " "
        + style.print(above, Dimension.GAUGE_PRESSURE);
  }

  private void hunts() {
    if (!answer.hunts().isEmpty()) {
      sheet.line("HUNTING", 0, 0);
      for (Cycle hunt : answer.hunts()) {
        sheet.line(HuntWords.of(hunt, answer, style), 2, 4);
      }
      sheet.blank();
    }
  }

  private void values() {
    Curve curve = answer.curve().curve();
    if (curve.columns().isEmpty()) {
      return;
    }
    sheet.line("VALUES", 0, 0);
    CurveTable table = new CurveTable(curve, style);
    boolean first = true;
    for (List<Integer> columns : table.chunks(sheet.width() - JOINED)) {
      if (!first) {
        sheet.blank();
      }
      table.heads(columns).forEach(line -> sheet.line(line, 0, 0));
      for (Curve.Row row : CurveText.shown(curve, curve.up())) {
        sheet.line(table.line(row, columns), 0, 0);
      }
      first = false;
    }
    sheet.blank();
  }

  private void foot() {
    if (!answer.assumes().isEmpty()) {
      sheet.labelled("ASSUMED", String.join(" ", answer.assumes()));
    }
    sheet.labelled("STANDS ON", answer.asked().standsOn());
    sheet.labelled("CAUTION", StateAnswer.CAUTION);
  }
}
