package dev.offtake.explain;

import dev.offtake.cause.find.Advice;
import dev.offtake.cause.find.Check;
import dev.offtake.cause.find.Found;
import dev.offtake.cause.find.Instrument;
import dev.offtake.cause.find.Scene;
import dev.offtake.part.Access;
import dev.offtake.part.Inspection;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Style;
import dev.offtake.study.Fault;
import dev.offtake.system.Assumption;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What to do next, as sentences without a layout: what a check asks and shows, what it hangs on,
 * what to do where no check is worth its time, and what is no help.
 */
final class CheckWords {
  /** Warmth of a wall goes slowly: a needle that still moves tells nothing. */
  private static final String SETTLED = " when it no longer moves";

  private static final int IN_BAND = 3;
  private static final int IN_ORDER = 5;
  private static final int NO_HELPS = 4;
  private static final Pattern IN_BRACKETS = Pattern.compile("\\((.*)\\)");

  private final FindView view;
  private final Found found;
  private final Advice advice;
  private final Style style;

  CheckWords(FindView view, Style style) {
    this.view = view;
    found = view.found();
    advice = found.advice();
    this.style = style;
  }

  /** Checks that are offered, without those that tell the same as one before them. */
  List<Advice.Offer> told() {
    List<Advice.Offer> told = new ArrayList<>();
    for (Advice.Offer offer : advice.offers()) {
      if (told.stream().noneMatch(other -> alike(other, offer))) {
        told.add(offer);
      }
    }
    return told;
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

  /** What a check would show, a line for each band. */
  List<String> bands(Instrument instrument, Advice.Offer offer) {
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
    String where = port && !named ? " at its test port" : "";
    String when = instrument.dimension() == Dimension.TEMPERATURE ? SETTLED : "";
    return "read the " + instrument.name() + where + when;
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

  /** What to do where no check is worth its time, a sentence each; the order of units included. */
  List<String> stop() {
    List<String> lines = new ArrayList<>();
    if (view.sound()) {
      lines.add(
          "No check is worth its time. Read again when the complaint comes back, on the side and"
              + " at the power where it was seen.");
    } else if (!advice.order().isEmpty()) {
      lines.add(
          found.explained()
              ? "No check is worth its time. Look at the units in this order:"
              : "Read again first. If it stays, look at the units in this order:");
      lines.addAll(order());
    } else if (!found.ranked().isEmpty()) {
      lines.add("Only one cause is likely: no reading would tell it from another.");
      Fault first = found.ranked().get(0).cause().faults().get(0);
      Inspection look = first.mode().inspection();
      lines.add(look(look, first.part().name()));
      lines.add(look.access().caution());
    }
    lines.removeIf(String::isEmpty);
    return lines;
  }

  List<String> order() {
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

  /** Readings that are the same whatever it is; put together where they are many. */
  List<String> noHelp() {
    List<String> lines = new ArrayList<>();
    for (Advice.NoHelp none : advice.noHelp()) {
      Instrument what = none.instrument();
      String shows = style.read(none.value(), what.dimension(), what.step());
      lines.add(none.power() + ", " + what.name() + ": about " + shows + " whichever it is");
    }
    if (lines.size() <= NO_HELPS) {
      return lines;
    }
    List<String> powers = advice.noHelp().stream().map(Advice.NoHelp::power).distinct().toList();
    List<String> names =
        advice.noHelp().stream().map(none -> none.instrument().name()).distinct().toList();
    String where = FindWords.list(powers, IN_ORDER, "and");
    return List.of("more of " + FindWords.list(names, IN_ORDER, "and") + " at " + where);
  }
}
