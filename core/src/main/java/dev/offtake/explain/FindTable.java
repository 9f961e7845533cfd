package dev.offtake.explain;

import dev.offtake.cause.Occasion;
import dev.offtake.cause.Reading;
import dev.offtake.cause.Seen;
import dev.offtake.cause.find.Found;
import dev.offtake.quantity.Style;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** What was read against what is foretold: {@code READ AGAINST} and what has to be said of it. */
final class FindTable {
  private static final int GROUPS = 3;
  private static final int COLUMN = 9;
  private static final int SLIM = 6;

  /** More likely than not. */
  private static final double ODD = 0.5;

  private final FindView view;
  private final Found found;
  private final Style style;
  private final Sheet sheet;

  FindTable(FindView view, Style style, Sheet sheet) {
    this.view = view;
    found = view.found();
    this.style = style;
    this.sheet = sheet;
  }

  void print(LocalDate today) {
    if (found.looks().stream().anyMatch(look -> !found.recorded(look))) {
      table();
    }
    new FindRecorded(view, style, sheet).print();
    odd();
    notWeighed();
    seen();
    found.readings().cautions(today).forEach(caution -> sheet.line(caution + ".", 2, 4));
  }

  /** Leading member of each of the first groups. */
  static List<Integer> leads(FindView view) {
    return view.lettered().stream().limit(GROUPS).map(group -> group.members().get(0)).toList();
  }

  private FindValue value(Found.Look look) {
    return new FindValue(look, found.scenes().get(look.scene()).trip().trip(), style);
  }

  private void table() {
    List<Integer> leads = leads(view);
    int columns = 2 * COLUMN + leads.size() * COLUMN + 2;
    int unit =
        1 + found.looks().stream().mapToInt(look -> value(look).unit().length()).max().orElse(0);
    int name = sheet.width() - columns - unit;
    StringBuilder head = new StringBuilder(Sheet.pad("READ AGAINST", name + unit));
    head.append(end("you", COLUMN)).append(end("healthy", COLUMN));
    for (int i = 0; i < leads.size(); i++) {
      head.append(end(FindView.letter(i), COLUMN));
    }
    sheet.line(head.toString(), 0, 0);
    int scene = -1;
    for (int i = 0; i < found.looks().size(); i++) {
      Found.Look look = found.looks().get(i);
      if (found.recorded(look)) {
        continue;
      }
      if (look.scene() != scene && found.scenes().size() > 1) {
        sheet.line(found.scenes().get(look.scene()).name(), 2, 4);
      }
      scene = look.scene();
      row(i, leads, unit);
    }
    if (!leads.isEmpty()) {
      String letters = leads.size() == 1 ? "A" : "A to " + FindView.letter(leads.size() - 1);
      String mark = leads.size() == 1 ? "" : "; < marks a reading that tells them apart";
      sheet.line("(" + letters + ": the first failure of each group" + mark + ")", 2, 4);
    }
  }

  private void row(int number, List<Integer> leads, int unit) {
    Found.Look look = found.looks().get(number);
    FindValue value = value(look);
    List<Double> foretold = new ArrayList<>();
    for (int lead : leads) {
      foretold.add(found.ranked().get(lead).foretold().get(number));
    }
    StringBuilder row = new StringBuilder();
    row.append(Sheet.pad(value.unit(), unit));
    row.append(end(value.read(), COLUMN)).append(end(value.foretold(look.sound()), COLUMN));
    foretold.forEach(si -> row.append(end(value.foretold(si), COLUMN)));
    row.append(
        foretold.size() > 1 && value.parts(foretold, found.system().modelError()) ? " <" : "");
    int end = sheet.width() - (row.toString().endsWith(" <") ? 0 : 2);
    sheet.right("    " + value.name(), SLIM, row.toString(), end);
  }

  private static String end(String text, int columns) {
    return " ".repeat(Math.max(1, columns - text.length())) + text;
  }

  private void odd() {
    for (Found.Look look : found.looks()) {
      if (look.odd() > ODD && !found.recorded(look)) {
        FindValue value = value(look);
        String read = (value.read() + " " + value.unit()).strip();
        String at = found.scenes().get(look.scene()).name();
        sheet.line(
            FindWords.capital(value.name())
                + " "
                + read
                + " at "
                + at
                + ": it does not fit. Read it again, or doubt its gauge.",
            2,
            4);
      }
    }
  }

  private void notWeighed() {
    List<Reading> weighed =
        found.looks().stream().flatMap(look -> look.reading().stream()).toList();
    for (Occasion occasion : found.readings().occasions()) {
      for (Reading reading : occasion.readings()) {
        if (reading.taken() && !weighed.contains(reading)) {
          String says = reading.about().name() + " " + reading.value().words();
          sheet.line("Not weighed: " + says + ". It needs a number or low, normal, high.", 2, 4);
        }
      }
      if (occasion.notDuplicated()) {
        sheet.line("Could not be duplicated: weighed as needles that stand as usual.", 2, 4);
      }
    }
  }

  private void seen() {
    for (Seen seen : found.readings().seen()) {
      String verdict =
          switch (seen.verdict()) {
            case SOUND -> "taken as sound";
            case FAULTY -> "taken as " + seen.mode();
            case TO_JUDGE -> "not weighed, a person must judge it";
          };
      sheet.line("Looked at " + seen.part() + ", \"" + seen.words() + "\": " + verdict + ".", 2, 4);
    }
  }
}
