package dev.offtake.explain;

import dev.offtake.cause.Occasion;
import dev.offtake.cause.Reading;
import dev.offtake.cause.find.Match;
import dev.offtake.cause.find.MatchedCourse;
import dev.offtake.cause.find.MatchedNumber;
import dev.offtake.cause.find.MatchedNumber.Verdict;
import dev.offtake.cause.find.MatchedPace;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Grammar;
import dev.offtake.quantity.Style;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Prints what a healthy run tells of a system in columns of a given width. */
public final class MatchText {
  private static final int LABEL = 14;
  private static final int NAME = 36;
  private static final int BEFORE = 18;
  private static final int AFTER = 18;

  /** Marks a reading that does not fit. */
  private static final String FAR = "  <";

  private final Match match;
  private final Style style;
  private final int width;
  private final MatchWords words;
  private final StringBuilder out = new StringBuilder();

  private MatchText(Match match, int width, Style style) {
    this.match = match;
    this.style = style;
    this.width = Math.max(60, width);
    words = new MatchWords(style);
  }

  /**
   * Prints.
   *
   * @param match what was told
   * @param width columns, 60 or more
   * @param style units
   * @param notes what else has to be said with care, whole sentences
   */
  public static String print(Match match, int width, Style style, List<String> notes) {
    MatchText text = new MatchText(match, width, style);
    text.head();
    text.numbers();
    text.together();
    text.paces();
    text.left();
    text.courses();
    text.foot(notes);
    return text.out.toString();
  }

  private void head() {
    line(match.system().title().toUpperCase(Locale.ROOT) + "   MATCH TO A HEALTHY RUN", 0, 0);
    if (!match.system().about().isEmpty()) {
      line(match.system().about(), 0, 0);
    }
    String item = match.readings().item();
    String date = match.readings().date().map(day -> ", " + day).orElse("");
    List<Occasion> occasions = match.readings().occasions();
    int recordings = match.readings().recordings().size();
    line(
        (item.isEmpty() ? "" : item + ": ")
            + Grammar.count(match.left().size(), "number")
            + " read on "
            + Grammar.count(occasions.size(), "occasion")
            + (recordings == 0 ? "" : ", " + Grammar.count(recordings, "recording"))
            + date,
        0,
        2);
    out.append('\n');
    words.headline(match).forEach(sentence -> line(sentence, 2, 2));
  }

  private void numbers() {
    List<MatchedNumber> told = match.worthWriting();
    if (!told.isEmpty()) {
      label("MATCHED");
      row("", "before", "after", "told");
      told.forEach(this::number);
    }
    List<MatchedNumber> rest =
        match.numbers().stream().filter(n -> n.verdict() == Verdict.NOT_TOLD).toList();
    if (!rest.isEmpty()) {
      label("NOT TOLD BY THESE READINGS");
      line(rest.stream().map(MatchWords::name).collect(Collectors.joining("; ")), 2, 2);
    }
  }

  private void number(MatchedNumber number) {
    String told = number.verdict() == Verdict.TOLD_WELL ? "well" : "partly";
    String before = number.statement().stated().text();
    row(MatchWords.name(number), before, words.after(number), told);
    if (number.beyond() > 0) {
      line(words.beyond(number), 4, 4);
    }
  }

  private void row(String name, String before, String after, String told) {
    boolean longName = name.length() > NAME - 3 || width < 78;
    if (longName && !name.isEmpty()) {
      line(name, 2, 4);
    }
    String start = longName ? "    " : pad("  " + name, NAME);
    line(start + pad(before, BEFORE) + pad(after, AFTER) + told, 0, 6);
  }

  private static String pad(String text, int columns) {
    return text + " ".repeat(Math.max(1, columns - text.length()));
  }

  private void together() {
    if (match.together().isEmpty()) {
      return;
    }
    label("ONLY TOGETHER");
    for (Match.Together pair : match.together()) {
      String one = MatchWords.name(match.numbers().get(pair.one()));
      String other = MatchWords.name(match.numbers().get(pair.other()));
      line(
          one
              + " and "
              + other
              + ": the readings tell their "
              + (pair.sum() ? "sum" : "difference")
              + ", neither of them alone",
          2,
          4);
    }
  }

  private void paces() {
    List<MatchedPace> told = match.toldPaces();
    if (match.paces().isEmpty()) {
      return;
    }
    label("HOW VALVES MOVE");
    if (!told.isEmpty()) {
      row("", "assumed", "after", "told");
    }
    for (MatchedPace pace : told) {
      String after =
          words.pace(pace, pace.value())
              + " ("
              + words.pace(pace, pace.low())
              + " to "
              + words.pace(pace, pace.high())
              + ")";
      String much = pace.verdict() == Verdict.TOLD_WELL ? "well" : "partly";
      row(pace.part() + " " + pace.line().words(), words.pace(pace, pace.before()), after, much);
    }
    int rest = match.paces().size() - told.size();
    line((told.isEmpty() ? "" : "and ") + words.notTold(rest), 2, 4);
    if (!told.isEmpty()) {
      line("For a profile:", 2, 4);
      words.valves(told).forEach(text -> out.append("    ").append(text).append('\n'));
    }
  }

  private void courses() {
    if (match.courses().isEmpty()) {
      return;
    }
    label("WHAT IS LEFT OF THE RECORDING");
    line(String.format(Locale.ROOT, "%-44s%9s%9s   %s", "", "file", "matched", "most"), 0, 0);
    for (MatchedCourse course : match.courses()) {
      Dimension dimension = FindRecorded.difference(course.channel().about());
      String name = course.channel().about().name() + ", " + style.unit(dimension);
      String numbers =
          String.format(
              Locale.ROOT,
              "%9s%9s   %s at %.1f s",
              style.number(course.before(), dimension),
              style.number(course.after(), dimension),
              style.number(course.most(), dimension),
              course.at());
      line(pad("    " + name, 44) + numbers, 0, 6);
    }
    line("root of the mean square difference over what was recorded, and the largest left", 2, 4);
  }

  private void left() {
    if (match.left().isEmpty()) {
      return;
    }
    label("WHAT IS LEFT");
    leftRow("", "read", "file", "matched", "off by", "");
    String scene = "";
    for (Match.Left left : match.left()) {
      if (!left.scene().name().equals(scene)) {
        scene = left.scene().name();
        line(scene, 2, 4);
      }
      Dimension dimension = MatchWords.dimension(left.reading());
      leftRow(
          left.reading().about().name() + " " + style.unit(dimension),
          style.number(left.read(), dimension),
          style.number(left.before(), dimension),
          style.number(left.after(), dimension),
          String.format(Locale.ROOT, "%.1f", Math.abs(left.errors())),
          left.fits() ? "" : FAR);
    }
    line("off by: counted in what gauge and model may do (standard deviations)", 2, 2);
    if (!match.left().stream().allMatch(Match.Left::fits)) {
      line(FAR.strip() + "  does not fit what the other readings say", 2, 2);
    }
    line("model error of pressures: " + words.pressure(match.pressure()), 2, 4);
    line("model error of temperatures: " + words.temperature(match.temperature()), 2, 4);
  }

  private void leftRow(
      String name, String read, String file, String matched, String off, String mark) {
    String numbers = String.format(Locale.ROOT, "%8s%8s%9s%8s", read, file, matched, off) + mark;
    boolean fits = width >= 40 + numbers.length() && name.length() < 36;
    if (!fits) {
      line(name, 4, 6);
    }
    line(fits ? pad("    " + name, 40) + numbers : numbers, 0, 8);
  }

  private void foot(List<String> notes) {
    out.append('\n');
    labelled("STANDS ON", String.join(" ", words.standsOn(match)));
    List<String> cautions = new ArrayList<>(notes);
    if (!match.ignored().isEmpty()) {
      String names =
          match.ignored().stream()
              .map(Reading::about)
              .map(about -> about.name())
              .distinct()
              .collect(Collectors.joining(", "));
      labelled("NOT USED", "Words and lights are no numbers: " + names + ".");
    }
    cautions.add(StateAnswer.CAUTION);
    labelled("CAUTION", String.join(" ", cautions));
  }

  private void label(String label) {
    out.append('\n').append(label).append('\n');
  }

  private void labelled(String label, String text) {
    line(pad(label, LABEL) + text, 0, LABEL);
  }

  private void line(String text, int indent, int hang) {
    out.append(Columns.wrap(text, width, indent, hang));
  }
}
