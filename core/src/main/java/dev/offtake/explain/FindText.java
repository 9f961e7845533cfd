package dev.offtake.explain;

import dev.offtake.cause.find.Found;
import dev.offtake.cause.find.Ranked;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Style;
import dev.offtake.system.BleedSystem;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Prints what a search found in columns of a given width. */
public final class FindText {
  private static final int GROUPS = 5;
  private static final int MEMBERS = 4;
  private static final int UNITS = 5;
  private static final int HANG = 5;
  private static final int INNER = 10;

  /** Chances below one in a hundred. */
  private static final double SMALL = 0.005;

  private final FindView view;
  private final Found found;
  private final Manner manner;
  private final Sheet sheet;
  private final FindWords words;

  private FindText(Found found, Manner manner) {
    view = FindView.of(found);
    this.found = found;
    this.manner = manner;
    sheet = new Sheet(manner.width());
    words = new FindWords(manner.style());
  }

  /**
   * How an answer is wanted.
   *
   * @param width columns, 60 or more
   * @param style units
   * @param all whether every failure is listed, else the first of each group
   * @param today calibration dates are judged by it where the readings carry no date
   * @param notes what else has to be said before the answer, whole sentences
   */
  public record Manner(int width, Style style, boolean all, LocalDate today, List<String> notes) {
    /** Keeps its list. */
    public Manner {
      notes = List.copyOf(notes);
    }
  }

  /**
   * Prints.
   *
   * @param found what was found
   * @param manner how
   */
  public static String print(Found found, Manner manner) {
    FindText text = new FindText(found, manner);
    text.head();
    text.causes();
    if (!text.view.sound()) {
      text.units();
    }
    new FindTable(text.view, manner.style(), text.sheet).print(manner.today());
    new FindChecks(text.view, manner.style(), text.sheet).print();
    text.foot();
    return text.sheet.toString();
  }

  private void head() {
    String title = found.system().title().toUpperCase(Locale.ROOT);
    String squawk = found.readings().squawk();
    String said = squawk.isEmpty() ? "" : "   \"" + squawk + "\"";
    sheet.right(title + said, 0, count(), sheet.width());
    if (!found.system().about().isEmpty()) {
      sheet.line(found.system().about(), 0, 0);
    }
    String where = where();
    List<String> parts = new ArrayList<>(List.of(where, found.readings().item()));
    found.readings().date().ifPresent(date -> parts.add(date.toString()));
    parts.removeIf(String::isEmpty);
    sheet.line(String.join(" | ", parts), 0, 0);
    List<String> notes = new ArrayList<>(manner.notes());
    notes.addAll(warnings(found.system(), manner.style()));
    notes.forEach(note -> sheet.line("NOTE  " + note, 0, 6));
    sheet.blank();
    new FindHeadline(view, manner.style())
        .sentences().stream()
            .filter(sentence -> !sentence.isEmpty())
            .forEach(sentence -> sheet.line(sentence, 2, 2));
    sheet.blank();
  }

  private String count() {
    long looks = found.readings().seen().size();
    String seen = looks == 0 ? "" : ", " + FindWords.count(looks, "look");
    int recorded = found.readings().recordings().size();
    String runs = recorded == 0 ? "" : ", " + FindWords.count(recorded, "recording");
    return FindWords.count(found.readings().count(), "reading") + runs + seen;
  }

  private String where() {
    List<String> names = found.scenes().stream().map(scene -> scene.name()).distinct().toList();
    if (names.size() == 1) {
      boolean run = found.scenes().get(0).instant().isPresent();
      return (run ? "" : found.readings().count() > 1 ? "all at " : "at ") + names.get(0);
    }
    return names.isEmpty() ? "" : "at " + String.join("; ", names);
  }

  /** What has to be said of the system before the answer. */
  static List<String> warnings(BleedSystem system, Style style) {
    List<String> warnings = new ArrayList<>(Warnings.of(system, false));
    if (Warnings.typical(system) > 0) {
      String unit = style.unit(Dimension.PRESSURE_DIFFERENCE);
      warnings.add(1, "Trust the order of checks, not the " + unit + ".");
    }
    return warnings;
  }

  private void causes() {
    sheet.right("WHAT IT CAN BE", 0, "chance in 100", sheet.width());
    if (!found.explained()) {
      sheet.line("None of it fits: these chances only compare one with the other.", 2, 2);
    }
    double rest = 0;
    int left = 0;
    for (int i = 0; i < view.lettered().size(); i++) {
      Found.Group group = view.lettered().get(i);
      if (manner.all() || (i < GROUPS && group.chance() >= SMALL)) {
        group(i, group);
      } else {
        rest += group.chance();
        left += group.members().size();
      }
    }
    if (left > 0) {
      last("and " + left + " more", rest);
    }
    if (view.hiding() > 0) {
      String count = FindWords.count(view.hiding(), "failure");
      last("something that hides in these readings (dead or dormant): " + count, view.hides());
      if (manner.all()) {
        view.hidden().stream()
            .flatMap(group -> group.members().stream())
            .forEach(member -> member(found.ranked().get(member)));
      }
    }
    last("none of these", found.none());
    last("nothing wrong", found.nothing());
  }

  private void last(String text, double chance) {
    sheet.right("  -  " + text, HANG, FindWords.chance(chance), sheet.width());
  }

  private void group(int number, Found.Group group) {
    String letter = Sheet.pad("  " + FindView.letter(number), HANG);
    List<Integer> members = group.members();
    String chance = FindWords.chance(group.chance());
    if (members.size() == 1) {
      String cause = words.cause(found.ranked().get(members.get(0)));
      sheet.right(letter + cause, HANG + 2, chance, sheet.width());
      return;
    }
    sheet.right(letter + "your readings are blind between these", HANG, chance, sheet.width());
    int shown = manner.all() ? members.size() : Math.min(MEMBERS, members.size());
    members.subList(0, shown).forEach(member -> member(found.ranked().get(member)));
    if (shown < members.size()) {
      sheet.line("and " + (members.size() - shown) + " more", HANG + 2, HANG + 4);
    }
  }

  private void member(Ranked ranked) {
    String chance = FindWords.chance(ranked.chance());
    String text = " ".repeat(HANG + 2) + words.cause(ranked);
    sheet.right(text, HANG + 4, chance, sheet.width() - INNER);
  }

  private void units() {
    List<Found.UnitChance> likely =
        found.units().stream().filter(unit -> unit.chance() >= SMALL).limit(UNITS).toList();
    if (likely.isEmpty()) {
      return;
    }
    sheet.line("BY REMOVABLE UNIT", 0, 0);
    for (Found.UnitChance unit : likely) {
      String name = FindWords.unit(found.system(), unit.part(), unit.unit());
      sheet.right("     " + name, HANG + 2, FindWords.chance(unit.chance()), sheet.width());
    }
  }

  private void foot() {
    String stands = String.join(" ", new FindStands(found, manner.style()).sentences());
    sheet.labelled("STANDS ON", stands);
    String item = found.readings().item();
    String date = found.readings().date().map(LocalDate::toString).orElse("");
    sheet.labelled("SIGN", blank("item", item) + "  " + blank("date", date));
    sheet.labelled("", blank("read by", "") + "  " + blank("checked by", ""));
    sheet.labelled("CAUTION", StateAnswer.CAUTION);
  }

  /** A label with room to write beside it, or with what is known. */
  private static String blank(String label, String known) {
    int room = 30 - label.length();
    return label
        + " "
        + (known.isEmpty() ? "_".repeat(room) : Sheet.pad(known, room).stripTrailing());
  }
}
