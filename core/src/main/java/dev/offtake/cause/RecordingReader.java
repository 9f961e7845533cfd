package dev.offtake.cause;

import dev.offtake.profile.Action;
import dev.offtake.profile.Profile;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Unit;
import dev.offtake.quantity.Units;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.FileText;
import dev.offtake.system.Item.Words;
import dev.offtake.system.Problems;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Reads the table of a recorder: a line of heads, the time first, then a line for each instant. A
 * head says what was recorded and its unit: {@code left duct pressure psig}, {@code left duct
 * (degF)}. An empty cell was not recorded; a line that begins with {@code #} is a remark. The table
 * that {@code play --csv} writes can be read.
 */
public final class RecordingReader {
  /** What begins the second table of {@code play --csv}; the recording ends there. */
  private static final String EVENTS = "event at s";

  /** What begins a line that only people read. */
  private static final String REMARK = "#";

  /** More lines are no recording of a run on the ground. */
  private static final int MOST = 200_000;

  /** So many mistakes are told of cells; the rest is mostly the same mistake. */
  private static final int TOLD = 5;

  private static final Pattern TIME =
      Pattern.compile("(?i)(?:time|t|seconds)?[\\s,]*[(\\[]?\\s*([a-z]*)\\s*[)\\]]?");

  private final Profile profile;
  private final String run;
  private final Problems problems;
  private final NameReader names;
  private final List<String> notes = new ArrayList<>();

  /** A column that is weighed. */
  private record Column(int number, About.Scaled about, Dimension dimension, Unit unit) {}

  private RecordingReader(BleedSystem system, Profile profile, String run, Problems problems) {
    this.profile = profile;
    this.run = run;
    this.problems = problems;
    names = new NameReader(new Vocabulary(system), problems);
  }

  /**
   * Reads a file.
   *
   * @param path the table
   * @param system what was recorded
   * @param profile what was done meanwhile
   * @param run name of the profile's file
   */
  public static RecordingRead read(Path path, BleedSystem system, Profile profile, String run) {
    Path last = path.getFileName();
    String name = last == null || last.toString().isEmpty() ? path.toString() : last.toString();
    Problems problems = new Problems();
    String text = FileText.read(path, name, problems);
    return done(
        text == null
            ? Optional.empty()
            : new RecordingReader(system, profile, run, problems).recording(name, text),
        problems);
  }

  /**
   * Reads a text.
   *
   * @param name how the text is called in problems
   * @param text the table
   * @param system what was recorded
   * @param profile what was done meanwhile
   * @param run name of the profile's file
   */
  public static RecordingRead readText(
      String name, String text, BleedSystem system, Profile profile, String run) {
    Problems problems = new Problems();
    String checked = FileText.decode(text.getBytes(StandardCharsets.UTF_8), name, problems);
    return done(
        checked == null
            ? Optional.empty()
            : new RecordingReader(system, profile, run, problems).recording(name, checked),
        problems);
  }

  private static RecordingRead done(Optional<Recording> recording, Problems problems) {
    return new RecordingRead(problems.none() ? recording : Optional.empty(), problems.sorted());
  }

  private Optional<Recording> recording(String file, String text) {
    List<List<Words>> rows = new ArrayList<>(CsvTable.rows(file, text, problems));
    rows.removeIf(row -> row.get(0).text().startsWith(REMARK));
    if (rows.isEmpty()) {
      problems.add(
          file, 1, "The recording is empty", "Begin with `time s,left duct pressure psig`");
      return Optional.empty();
    }
    if (breaks()) {
      String mend = "A profile for a recording says what was done, not what was broken";
      problems.add(run, 1, "The profile of the recording breaks something", mend);
      return Optional.empty();
    }
    List<Words> heads = rows.get(0);
    Unit clock = clock(heads.get(0));
    List<Column> columns = columns(heads);
    if (columns.isEmpty() && problems.none()) {
      String mend = "Name what was recorded with its unit: `left duct pressure psig`";
      problems.add(heads.get(0), "No column of the recording can be weighed", mend);
    }
    if (clock == null || columns.isEmpty() || !problems.none()) {
      return Optional.empty();
    }
    return channels(rows, clock, columns)
        .map(channels -> new Recording(file, run, profile, channels, notes));
  }

  private boolean breaks() {
    return !profile.start().faults().isEmpty()
        || profile.actions().stream().anyMatch(Action.Breaks.class::isInstance);
  }

  private @Nullable Unit clock(Words head) {
    Matcher matcher = TIME.matcher(head.text().strip());
    String unit = matcher.matches() ? matcher.group(1) : "";
    Optional<Unit> found =
        matcher.matches()
            ? Units.find(unit.isEmpty() ? "s" : unit, Dimension.TIME)
            : Optional.empty();
    if (found.isEmpty()) {
      String wrong = "The first column of a recording is the time, not `" + head.text() + "`";
      problems.add(head, wrong, "Begin the line of heads with `time s`");
    }
    return found.orElse(null);
  }

  private List<Column> columns(List<Words> heads) {
    List<Column> columns = new ArrayList<>();
    for (int i = 1; i < heads.size(); i++) {
      column(i, heads.get(i)).ifPresent(columns::add);
    }
    for (int i = 0; i < columns.size(); i++) {
      for (int k = 0; k < i; k++) {
        if (columns.get(i).about().equals(columns.get(k).about())) {
          Words head = heads.get(columns.get(i).number());
          problems.add(head, "`" + head.text() + "` is recorded twice", "Leave one column out");
        }
      }
    }
    return columns;
  }

  /** Name and unit apart: the longest ending that is a unit of a pressure or a temperature. */
  private Optional<Column> column(int number, Words head) {
    String text = head.text().replaceAll("[\\[\\](),]", " ").replaceAll("\\s+", " ").strip();
    for (int at = text.indexOf(' '); at >= 0; at = text.indexOf(' ', at + 1)) {
      String unit = text.substring(at + 1);
      for (Dimension dimension : List.of(Dimension.PRESSURE, Dimension.TEMPERATURE)) {
        Optional<Unit> found = Units.find(unit, dimension);
        if (found.isPresent()) {
          return named(number, head, text.substring(0, at), found.get());
        }
      }
      if (Units.find(unit, Dimension.PRESSURE_DIFFERENCE).isPresent()) {
        String wrong = "`" + head.text() + "` does not say whether it is gauge or absolute";
        problems.add(head, wrong, "Write its unit as psig or psia");
        return Optional.empty();
      }
    }
    notes.add(
        "The column `" + head.text() + "` is not weighed: it is no pressure and no temperature.");
    return Optional.empty();
  }

  private Optional<Column> named(int number, Words head, String name, Unit unit) {
    Words at = new Words(head.file(), head.line(), name);
    Words value = new Words(head.file(), head.line(), "1 " + unit.symbol());
    Words none = new Words(head.file(), head.line(), "");
    Optional<About> about = names.find(new Entered(at, value, none, ""));
    boolean hot = unit.dimension() == Dimension.TEMPERATURE;
    if (about.isPresent() && about.get() instanceof About.Scaled scaled) {
      if (scaled.temperature() == hot) {
        return Optional.of(new Column(number, scaled, unit.dimension(), unit));
      }
      String wrong = "`" + name + "` is not measured in " + unit.symbol();
      problems.add(head, wrong, "Give it a unit of " + scaled.dimension().words());
    } else if (about.isPresent()) {
      notes.add("The column `" + head.text() + "` is not weighed: it is no gauge and no port.");
    }
    return Optional.empty();
  }

  private Optional<List<Recording.Channel>> channels(
      List<List<Words>> rows, Unit clock, List<Column> columns) {
    List<List<double[]>> kept = new ArrayList<>();
    columns.forEach(column -> kept.add(new ArrayList<>()));
    double last = Double.NEGATIVE_INFINITY;
    int told = 0;
    for (int r = 1; r < rows.size() && told < TOLD; r++) {
      List<Words> row = rows.get(r);
      if (row.get(0).text().toLowerCase(Locale.ROOT).startsWith(EVENTS)) {
        break;
      }
      if (r > MOST) {
        problems.add(row.get(0), "The recording has more than 200,000 lines", "Keep fewer of them");
        return Optional.empty();
      }
      double time = clock.toSi(number(row.get(0)));
      if (Double.isNaN(time)) {
        told++;
        continue;
      }
      if (time <= last) {
        String wrong = "The time runs back or stands still: " + row.get(0).text();
        problems.add(row.get(0), wrong, "Sort the lines by time, each time once");
        return Optional.empty();
      }
      last = time;
      for (int c = 0; c < columns.size(); c++) {
        Column column = columns.get(c);
        if (column.number() < row.size() && !row.get(column.number()).text().isEmpty()) {
          double value = number(row.get(column.number()));
          told += Double.isNaN(value) ? 1 : 0;
          kept.get(c).add(new double[] {time, column.unit().toSi(value)});
        }
      }
    }
    return problems.none() ? Optional.of(channels(columns, kept, rows.get(0))) : Optional.empty();
  }

  private List<Recording.Channel> channels(
      List<Column> columns, List<List<double[]>> kept, List<Words> heads) {
    List<Recording.Channel> channels = new ArrayList<>();
    for (int c = 0; c < columns.size(); c++) {
      List<double[]> own = kept.get(c);
      Column column = columns.get(c);
      if (own.isEmpty()) {
        Words head = heads.get(column.number());
        problems.add(head, "`" + head.text() + "` holds no value", "Leave the column out");
      } else {
        double[] seconds = own.stream().mapToDouble(pair -> pair[0]).toArray();
        double[] values = own.stream().mapToDouble(pair -> pair[1]).toArray();
        channels.add(new Recording.Channel(column.about(), column.dimension(), seconds, values));
      }
    }
    return channels;
  }

  private double number(Words cell) {
    try {
      double value = Double.parseDouble(cell.text());
      if (Math.abs(value) < 1e9) {
        return value;
      }
    } catch (NumberFormatException none) {
      // Told below, as what is too large.
    }
    String mend =
        "Write numbers with a point, such as 31.4; leave a cell empty where none was read";
    problems.add(cell, "`" + cell.text() + "` is no number of a recording", mend);
    return Double.NaN;
  }
}
