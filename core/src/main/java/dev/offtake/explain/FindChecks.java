package dev.offtake.explain;

import dev.offtake.cause.find.Advice;
import dev.offtake.cause.find.Check;
import dev.offtake.cause.find.Found;
import dev.offtake.cause.find.Instrument;
import dev.offtake.cause.find.Scene;
import dev.offtake.part.Access;
import dev.offtake.part.Inspection;
import dev.offtake.quantity.Style;
import dev.offtake.study.Fault;
import dev.offtake.system.Assumption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What to do next, in words: {@code CHECK NEXT}, {@code NO HELP}, {@code NOT ASKED FOR}. */
final class FindChecks {
  private static final int IN_BAND = 3;
  private static final int IN_ORDER = 5;
  private static final int NO_HELPS = 4;
  private static final int HANG = 5;
  private static final Pattern IN_BRACKETS = Pattern.compile("\\((.*)\\)");

  private final FindView view;
  private final Found found;
  private final Advice advice;
  private final Style style;
  private final Sheet sheet;

  FindChecks(FindView view, Style style, Sheet sheet) {
    this.view = view;
    found = view.found();
    advice = found.advice();
    this.style = style;
    this.sheet = sheet;
  }

  void print() {
    if (advice.stop()) {
      stop();
    } else {
      offers();
    }
    noHelp();
    refused();
  }

  private void refused() {
    String label = "NOT ASKED FOR";
    for (Advice.Refused refused : advice.refused()) {
      sheet.labelled(label, refused.scene() + ": " + refused.why());
      label = "";
    }
  }

  private void offers() {
    sheet.right("CHECK NEXT", 0, "minutes", sheet.width());
    Map<String, List<String>> cautions = new LinkedHashMap<>();
    List<Advice.Offer> told = new ArrayList<>();
    for (Advice.Offer offer : advice.offers()) {
      boolean alike = told.stream().anyMatch(other -> alike(other, offer));
      if (!alike) {
        told.add(offer);
        offer(told.size(), offer);
        for (Access access : offer.check().access().stream().sorted().toList()) {
          cautions
              .computeIfAbsent(access.caution(), key -> new ArrayList<>())
              .add(String.valueOf(told.size()));
        }
      }
    }
    cautions.remove("");
    cautions.forEach(
        (caution, numbers) ->
            sheet.line("For " + FindWords.list(numbers, IN_ORDER, "and") + ": " + caution, 2, 4));
    without();
  }

  /** Whether two offers read the same thing at the same power and tell the same. */
  private boolean alike(Advice.Offer one, Advice.Offer two) {
    return one.check() instanceof Check.Run a
        && two.check() instanceof Check.Run b
        && a.instrument().equals(b.instrument())
        && a.scene().power().equals(b.scene().power())
        && one.hangsOn().equals(two.hangsOn())
        && bands(a.instrument(), one).equals(bands(b.instrument(), two));
  }

  private void offer(int number, Advice.Offer offer) {
    String what = Sheet.pad("  " + number, HANG) + words(offer.check());
    sheet.right(what, HANG, FindWords.minutes(offer.minutes()), sheet.width());
    if (offer.check() instanceof Check.Run run) {
      bands(run.instrument(), offer).forEach(line -> sheet.line(line, HANG + 2, HANG + 4));
    }
    offer.hangsOn().ifPresent(assumption -> sheet.line(hangsOn(assumption), HANG, HANG));
    sheet.line(FindWords.finish(offer.finish(), advice.without()), HANG, HANG);
  }

  /** What a check would show, a line for each band. */
  private List<String> bands(Instrument instrument, Advice.Offer offer) {
    FindBands bands = new FindBands(instrument, style);
    return bands.of(offer.expects()).stream()
        .map(band -> bands.shown(band) + ": " + causes(band))
        .toList();
  }

  private String causes(FindBands.Band band) {
    List<String> causes = new ArrayList<>();
    for (int number : band.causes()) {
      if (number >= 0) {
        causes.add(FindWords.cause(found.ranked().get(number).cause()));
      }
    }
    if (band.causes().contains(-1)) {
      // Always told: it is what a person hopes for.
      causes.add(Math.min(causes.size(), IN_BAND - 1), "nothing wrong");
    }
    return FindWords.list(causes, IN_BAND, "or");
  }

  /** A check in words, a whole sentence. */
  static String words(Check check, Found found) {
    if (check instanceof Check.Run run) {
      return FindWords.capital(at(run.scene(), found)) + ": " + reads(run.instrument()) + ".";
    }
    Fault fault = ((Check.Look) check).fault();
    return look(fault.mode().inspection(), fault.part().name());
  }

  private String words(Check check) {
    return words(check, found);
  }

  private static String look(Inspection look, String part) {
    String tools = look.tools().isEmpty() ? "" : " Tools: " + look.tools() + ".";
    return FindWords.capital(part) + ", " + look.access().words() + ": " + look.how() + "." + tools;
  }

  private static String reads(Instrument instrument) {
    if (instrument.lamp()) {
      return "look at the " + instrument.name();
    }
    boolean port = instrument.access() == Access.TEST_PORT;
    boolean named = instrument.name().contains("port");
    return "read the " + instrument.name() + (port && !named ? " at its test port" : "");
  }

  /** Power and line-up, with the switches that have to be moved where the name does not tell. */
  static String at(Scene scene, Found found) {
    List<String> moves = new ArrayList<>();
    found
        .system()
        .switches()
        .forEach(
            (control, positions) -> {
              String stands = scene.setup().positions().getOrDefault(control, positions.get(0));
              String move = control + " " + stands;
              if (!stands.equals(positions.get(0)) && !scene.name().contains(move)) {
                moves.add(move);
              }
            });
    return scene.name() + (moves.isEmpty() ? "" : " (" + String.join(", ", moves) + ")");
  }

  /** What an offer holds on that the file does not say. */
  static String hangsOn(Assumption assumption) {
    Matcher why = IN_BRACKETS.matcher(assumption.says());
    String says = why.find() ? why.group(1) : "your file does not say";
    return "Holds only if the " + assumption.subject() + " stays live: " + says + ". Ask first.";
  }

  private void stop() {
    sheet.line("CHECK NEXT", 0, 0);
    if (view.sound()) {
      sheet.line(
          "No check is worth its time. Read again when the complaint comes back, on the side and"
              + " at the power where it was seen.",
          2,
          2);
    } else if (!advice.order().isEmpty()) {
      String first =
          found.explained()
              ? "No check is worth its time. Look at the units in this order:"
              : "Read again first. If it stays, look at the units in this order:";
      sheet.line(first, 2, 2);
      order().forEach(line -> sheet.line(line, 2, 4));
    } else if (!found.ranked().isEmpty()) {
      sheet.line("Only one cause is likely: no reading would tell it from another.", 2, 2);
      Fault first = found.ranked().get(0).cause().faults().get(0);
      sheet.line(look(first.mode().inspection(), first.part().name()), 2, 2);
      caution(first.mode().inspection().access());
    }
  }

  private void caution(Access access) {
    if (!access.caution().isEmpty()) {
      sheet.line(access.caution(), 2, 2);
    }
  }

  private List<String> order() {
    List<String> lines = new ArrayList<>();
    for (Advice.Unit unit : advice.order()) {
      if (lines.size() < IN_ORDER) {
        String minutes = FindWords.minutes(unit.minutes());
        String name = FindWords.unit(found.system(), unit.part(), unit.unit());
        lines.add(lines.size() + 1 + "  " + name + ", " + minutes + " minutes");
      }
    }
    if (advice.order().size() > IN_ORDER) {
      lines.add("   and " + (advice.order().size() - IN_ORDER) + " more");
    }
    return lines;
  }

  private void without() {
    List<String> names =
        advice.order().stream()
            .map(unit -> FindWords.unit(found.system(), unit.part(), unit.unit()))
            .toList();
    if (names.size() > 1) {
      String order = FindWords.list(names, IN_ORDER, "then");
      sheet.line("Without any check look in this order: " + order + ".", 2, 4);
    }
  }

  private void noHelp() {
    List<String> lines = new ArrayList<>();
    for (Advice.NoHelp none : advice.noHelp()) {
      Instrument what = none.instrument();
      String shows = style.read(none.value(), what.dimension(), what.step());
      lines.add(none.power() + ", " + what.name() + ": about " + shows + " whichever it is");
    }
    if (lines.size() > NO_HELPS) {
      List<String> powers = advice.noHelp().stream().map(Advice.NoHelp::power).distinct().toList();
      List<String> names =
          advice.noHelp().stream().map(none -> none.instrument().name()).distinct().toList();
      String where = FindWords.list(powers, IN_ORDER, "and");
      lines = List.of("more of " + FindWords.list(names, IN_ORDER, "and") + " at " + where);
    }
    sheet.labelled("NO HELP", String.join("; ", lines));
  }
}
