package dev.offtake.explain;

import dev.offtake.cause.About;
import dev.offtake.cause.Reading;
import dev.offtake.cause.Recording;
import dev.offtake.cause.Value;
import dev.offtake.cause.find.Found;
import dev.offtake.cause.find.Instant;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Style;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What was recorded against what is foretold: how far apart at most, and when. */
final class FindRecorded {
  private static final int COLUMN = 18;

  private final FindView view;
  private final Found found;
  private final Style style;
  private final Sheet sheet;

  /**
   * How far a course lies from a recorded one.
   *
   * @param most largest difference of recorded less foretold, SI
   * @param at when, s
   * @param mean root of the mean square difference, SI
   */
  record Apart(double most, double at, double mean) {}

  FindRecorded(FindView view, Style style, Sheet sheet) {
    this.view = view;
    found = view.found();
    this.style = style;
    this.sheet = sheet;
  }

  void print() {
    for (Recording recording : found.readings().recordings()) {
      print(recording);
    }
  }

  private void print(Recording recording) {
    List<Integer> leads = FindTable.leads(view);
    StringBuilder head = new StringBuilder(end("healthy"));
    for (int i = 0; i < leads.size(); i++) {
      head.append(end(FindView.letter(i)));
    }
    row("RECORDED AGAINST", 0, head.toString());
    for (Recording.Channel channel : recording.channels()) {
      Dimension dimension = difference(channel.about());
      StringBuilder row =
          new StringBuilder(end(told(apart(found, recording, channel, -1), dimension)));
      leads.forEach(
          lead -> row.append(end(told(apart(found, recording, channel, lead), dimension))));
      String name = channel.about().name() + ", " + style.unit(dimension);
      row("    " + name, 6, row.toString());
    }
    swings(recording, leads);
    long instants = found.scenes().stream().filter(scene -> of(scene.instant(), recording)).count();
    sheet.line(
        "(largest difference of "
            + recording.file()
            + " from "
            + recording.run()
            + " as it would run, and when, over "
            + instants
            + " instants; + where the record is higher)",
        2,
        4);
    recording.notes().forEach(note -> sheet.line(note, 2, 4));
  }

  /** How far each channel swings where something swings for longer than it was done. */
  private void swings(Recording recording, List<Integer> leads) {
    for (int i = 0; i < found.looks().size(); i++) {
      Found.Look look = found.looks().get(i);
      boolean own = of(found.scenes().get(look.scene()).instant(), recording);
      if (!own || !(look.reading().orElseThrow().value() instanceof Value.Swing swing)) {
        continue;
      }
      About.Scaled about = (About.Scaled) look.reading().orElseThrow().about();
      Dimension dimension = difference(about);
      StringBuilder row = new StringBuilder(end(size(swing, look.sound(), dimension)));
      for (int lead : leads) {
        double foretold = found.ranked().get(lead).foretold().get(i);
        row.append(end(size(swing, foretold, dimension)));
      }
      String name =
          String.format(
              Locale.ROOT,
              "    %s swings %s %s either way, %.0f to %.0f s",
              about.name(),
              style.number(swing.half(), dimension),
              style.unit(dimension),
              swing.from(),
              swing.until());
      row(name, 6, row.toString());
    }
  }

  private String size(Value.Swing swing, double foretold, Dimension dimension) {
    return "by " + style.number(swing.size(foretold), dimension);
  }

  /** On one line where there is room for the name, else the name stands above. */
  private void row(String name, int hang, String numbers) {
    if (name.length() + numbers.length() < sheet.width()) {
      sheet.right(name, hang, numbers, sheet.width());
    } else {
      sheet.line(name.strip(), name.length() - name.strip().length(), hang);
      sheet.right("", 0, numbers, sheet.width());
    }
  }

  static Dimension difference(About.Scaled about) {
    return about.temperature() ? Dimension.TEMPERATURE_DIFFERENCE : Dimension.PRESSURE_DIFFERENCE;
  }

  private String told(Apart apart, Dimension dimension) {
    String much = style.number(apart.most(), dimension);
    String sign = apart.most() > 0 ? "+" : "";
    return String.format(Locale.ROOT, "%s%s at %.1f s", sign, much, apart.at());
  }

  private static String end(String text) {
    return " ".repeat(Math.max(1, COLUMN - text.length())) + text;
  }

  private static boolean of(Optional<Instant> instant, Recording recording) {
    return instant.isPresent() && instant.get().recording().equals(recording);
  }

  /**
   * How far a cause lies from a recorded course.
   *
   * @param lead number in the ranking; −1 for a sound system
   */
  static Apart apart(Found found, Recording recording, Recording.Channel channel, int lead) {
    double most = 0;
    double at = 0;
    List<Double> squares = new ArrayList<>();
    for (int i = 0; i < found.looks().size(); i++) {
      Found.Look look = found.looks().get(i);
      Optional<Instant> instant = found.scenes().get(look.scene()).instant();
      if (of(instant, recording) && of(look, channel)) {
        double foretold = lead < 0 ? look.sound() : found.ranked().get(lead).foretold().get(i);
        double off = read(look) - foretold;
        squares.add(off * off);
        if (Math.abs(off) > Math.abs(most)) {
          most = off;
          at = instant.orElseThrow().seconds();
        }
      }
    }
    double mean = squares.stream().mapToDouble(square -> square).average().orElse(0);
    return new Apart(most, at, Math.sqrt(mean));
  }

  private static boolean of(Found.Look look, Recording.Channel channel) {
    return look.reading()
        .filter(reading -> reading.value() instanceof Value.Figure)
        .map(Reading::about)
        .filter(channel.about()::equals)
        .isPresent();
  }

  private static double read(Found.Look look) {
    return ((Value.Figure) look.reading().orElseThrow().value()).stated().nominal();
  }
}
