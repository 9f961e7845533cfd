package dev.offtake.explain;

import dev.offtake.cause.find.Advice;
import dev.offtake.cause.find.Check;
import dev.offtake.cause.find.Found;
import dev.offtake.part.Access;
import dev.offtake.quantity.Style;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What to do next, in words: {@code CHECK NEXT}, {@code NO HELP}, {@code NOT ASKED FOR}. */
final class FindChecks {
  private static final int IN_ORDER = 5;
  private static final int HANG = 5;

  private final Found found;
  private final Advice advice;
  private final CheckWords words;
  private final Sheet sheet;

  FindChecks(FindView view, Style style, Sheet sheet) {
    found = view.found();
    advice = found.advice();
    words = new CheckWords(view, style);
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
    int number = 0;
    for (Advice.Offer offer : words.told()) {
      number++;
      offer(number, offer);
      for (Access access : offer.check().access().stream().sorted().toList()) {
        cautions
            .computeIfAbsent(access.caution(), key -> new ArrayList<>())
            .add(String.valueOf(number));
      }
    }
    cautions.remove("");
    cautions.forEach(
        (caution, numbers) ->
            sheet.line("For " + FindWords.list(numbers, IN_ORDER, "and") + ": " + caution, 2, 4));
    without();
  }

  private void offer(int number, Advice.Offer offer) {
    String what = Sheet.pad("  " + number, HANG) + CheckWords.words(offer.check(), found);
    sheet.right(what, HANG, FindWords.minutes(offer.minutes()), sheet.width());
    if (offer.check() instanceof Check.Run run) {
      words.bands(run.instrument(), offer).forEach(line -> sheet.line(line, HANG + 2, HANG + 4));
    }
    offer.hangsOn().ifPresent(assumption -> sheet.line(CheckWords.hangsOn(assumption), HANG, HANG));
    sheet.line(FindWords.finish(offer.finish(), advice.without()), HANG, HANG);
  }

  private void stop() {
    sheet.line("CHECK NEXT", 0, 0);
    words.stop().forEach(line -> sheet.line(line, 2, 4));
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
    sheet.labelled("NO HELP", String.join("; ", words.noHelp()));
  }
}
