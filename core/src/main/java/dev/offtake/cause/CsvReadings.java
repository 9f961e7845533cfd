package dev.offtake.cause;

import dev.offtake.system.BleedSystem;
import dev.offtake.system.Hint;
import dev.offtake.system.Item.Words;
import dev.offtake.system.Problems;
import dev.offtake.system.Texts;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Reads a table, one reading a line: {@code at,line-up,what,read,with,note}. Lines that follow one
 * another with the same head are one occasion, until a thing is read again.
 */
final class CsvReadings {
  /** Columns in the usual order; any order will do, and what is not needed may be left out. */
  static final List<String> COLUMNS = List.of("at", "line-up", "what", "read", "with", "note");

  private static final List<String> NEEDED = List.of("at", "what", "read");
  private static final String SEEN = "seen ";

  private final BleedSystem system;
  private final Problems problems;
  private final Gauges gauges;
  private final OccasionReader reader;
  private final List<Occasion> occasions = new ArrayList<>();
  private final List<Seen> seen = new ArrayList<>();
  private final List<Entered> open = new ArrayList<>();
  private final Set<String> told = new HashSet<>();
  private List<Words> head = List.of();

  CsvReadings(BleedSystem system, Problems problems) {
    this.system = system;
    this.problems = problems;
    gauges = new Gauges(system, false, problems);
    reader = new OccasionReader(system, gauges, Optional.empty(), problems);
  }

  Optional<Readings> read(String file, String text) {
    List<List<Words>> rows = CsvTable.rows(file, text, problems);
    if (rows.isEmpty()) {
      String mend = "Begin with the line `" + String.join(",", COLUMNS) + "`";
      problems.add(file, 1, "The file is empty", mend);
      return Optional.empty();
    }
    List<String> columns = columns(rows.get(0));
    if (columns.isEmpty()) {
      return Optional.empty();
    }
    rows.stream().skip(1).forEach(row -> row(row, columns));
    close();
    if (occasions.isEmpty() && seen.isEmpty() && problems.none()) {
      problems.add(file, 1, "The table holds no reading", "Write one reading a line under it");
    }
    return Optional.of(Readings.of(gauges.all(), occasions, seen));
  }

  /** Names of the columns; none with a problem told. */
  private List<String> columns(List<Words> first) {
    List<String> columns = new ArrayList<>();
    Words place = first.get(0);
    String usual = "Begin with the line `" + String.join(",", COLUMNS) + "`";
    if (first.size() == 1 && place.text().matches(".*[;\t].*")) {
      String wrong = "The columns are not parted by commas";
      problems.add(place, wrong, "Save the table with commas between its columns");
      return List.of();
    }
    if (first.stream().noneMatch(CsvReadings::like)) {
      // Its words are not repeated: such a file is another one, and may hold what is secret.
      problems.add(place, "The first line names no column of readings", usual);
      return List.of();
    }
    boolean sound = true;
    for (Words cell : first) {
      String name = cell.text().toLowerCase(Locale.ROOT);
      if (!COLUMNS.contains(name) || columns.contains(name)) {
        String wrong = columns.contains(name) ? " is there twice" : " is no column of readings";
        String near = Hint.nearest(name, COLUMNS);
        String mend =
            near.isEmpty() || columns.contains(name) ? usual : "Did you mean `" + near + "`?";
        problems.add(cell, "`" + cell.text() + "`" + wrong, mend);
        sound = false;
      }
      columns.add(name);
    }
    for (String needed : NEEDED) {
      if (sound && !columns.contains(needed)) {
        problems.add(place, "The column `" + needed + "` is missing", usual);
        return List.of();
      }
    }
    return sound ? columns : List.of();
  }

  /** Whether a cell of the first line is the name of a column, or nearly so. */
  private static boolean like(Words cell) {
    String name = cell.text().toLowerCase(Locale.ROOT);
    return COLUMNS.contains(name) || !Hint.nearest(name, COLUMNS).isEmpty();
  }

  private void row(List<Words> row, List<String> columns) {
    if (row.size() > columns.size()) {
      String wrong = "The line has more cells than there are columns";
      problems.add(row.get(0), wrong, "Put a cell that holds a comma in double quotes");
      return;
    }
    Words what = cell(row, columns, "what");
    Words said = cell(row, columns, "read");
    if (what.text().toLowerCase(Locale.ROOT).startsWith(SEEN)) {
      Words part = Texts.at(what, what.text().substring(SEEN.length()));
      new SeenReader(system, problems).read(part, said).ifPresent(seen::add);
      return;
    }
    if (what.text().isEmpty()) {
      problems.add(what, "The line does not say what was read", "Fill the column `what`");
      return;
    }
    Words with = cell(row, columns, "with");
    boolean crew = with.text().equalsIgnoreCase(HeadReader.CREW);
    List<Words> own = new ArrayList<>(List.of(cell(row, columns, "at")));
    own.add(cell(row, columns, "line-up"));
    own.add(Texts.at(with, crew ? HeadReader.CREW : ""));
    boolean same = texts(own).equals(texts(head));
    if (!same || !told.add(what.text().toLowerCase(Locale.ROOT))) {
      close();
      head = own;
      told.add(what.text().toLowerCase(Locale.ROOT));
    }
    Words gauge = crew ? Texts.at(with, "") : with;
    open.add(new Entered(what, said, gauge, cell(row, columns, "note").text()));
  }

  private static List<String> texts(List<Words> words) {
    return words.stream().map(w -> w.text().toLowerCase(Locale.ROOT)).toList();
  }

  private static Words cell(List<Words> row, List<String> columns, String name) {
    int column = columns.indexOf(name);
    boolean there = column >= 0 && column < row.size();
    return there ? row.get(column) : Texts.at(row.get(0), "");
  }

  private void close() {
    if (!open.isEmpty()) {
      Head said = new Head(head.get(0));
      head.forEach(words -> reader.heads().read(said, words));
      reader.read(said, open).ifPresent(occasions::add);
    }
    open.clear();
    told.clear();
  }
}
