package dev.offtake.explain;

import dev.offtake.part.Extent;
import dev.offtake.quantity.Style;
import dev.offtake.study.Fault;
import dev.offtake.study.Sign;
import dev.offtake.study.effect.Effects;
import dev.offtake.study.effect.FaultEffect;
import dev.offtake.study.effect.Finding;
import dev.offtake.study.effect.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The failure-effects table as comma-separated values: a line for each failure at each occasion,
 * then, after an empty line, the pairs in which a dormant failure bites.
 */
public final class EffectsCsv {
  private static final List<String> HEADS =
      List.of(
          "part",
          "removable unit",
          "failure",
          "extent",
          "failures per million hours",
          "power",
          "line-up",
          "class",
          "healthy",
          "now",
          "leads to",
          "valves that move",
          "noticed",
          "shows",
          "only at a test port",
          "trouble");

  private final Effects effects;
  private final Style style;
  private final Csv csv = new Csv();

  private EffectsCsv(Effects effects, Style style) {
    this.effects = effects;
    this.style = style;
  }

  /**
   * Makes the text.
   *
   * @param effects the table
   * @param style units
   */
  public static String print(Effects effects, Style style) {
    EffectsCsv table = new EffectsCsv(effects, style);
    table.csv.line(HEADS);
    effects.rows().forEach(table::rows);
    if (effects.pairs()) {
      table.bites();
    }
    return table.csv.text();
  }

  private void rows(FaultEffect row) {
    Fault fault = row.fault();
    String parts =
        row.faults().stream().map(f -> f.part().name()).collect(Collectors.joining(" and "));
    @Nullable Extent asks = fault.mode().extent();
    for (Outcome outcome : row.outcomes()) {
      List<String> cells = new ArrayList<>();
      cells.add(parts);
      cells.add(fault.mode().unit());
      cells.add(fault.mode().name());
      cells.add(asks == null ? "" : Fault.print(asks, fault.extent(), style));
      cells.add(String.format(Locale.ROOT, "%.3g", 1e6 * fault.mode().rate()));
      cells.add(outcome.occasion().power());
      cells.add(outcome.occasion().lineUp());
      cells.add(outcome.severity(effects.scale()).number());
      cells.add(outcome.before().word());
      cells.add(outcome.after().word());
      cells.add(leads(outcome.findings(), outcome));
      cells.add(moves(outcome));
      cells.add(outcome.trouble().isEmpty() ? SignWords.of(outcome.noticed()) : "");
      cells.add(shows(outcome, false));
      cells.add(shows(outcome, true));
      cells.add(outcome.trouble());
      csv.line(cells);
    }
  }

  private String leads(List<Finding> findings, Outcome outcome) {
    return findings.stream()
        .map(finding -> EffectsText.words(finding, outcome.occasion(), style))
        .collect(Collectors.joining("; "));
  }

  private static String moves(Outcome outcome) {
    return outcome.moves().stream().map(EffectsText::moved).collect(Collectors.joining("; "));
  }

  private String shows(Outcome outcome, boolean atPort) {
    return outcome.signs().stream()
        .filter(sign -> sign.atPort() == atPort && sign.verdict() != Sign.Verdict.HIDDEN)
        .map(sign -> SignWords.of(sign, style) + " (" + SignWords.of(sign.verdict()) + ")")
        .collect(Collectors.joining("; "));
  }

  private void bites() {
    csv.line(List.of());
    csv.line(
        List.of(
            "dormant failure",
            "bites with",
            "power",
            "line-up",
            "class of the second alone",
            "class of both",
            "leads to"));
    for (Effects.Bite bite : effects.bites()) {
      csv.line(
          List.of(
              bite.dormant().words(style),
              bite.partner().words(style),
              bite.occasion().power(),
              bite.occasion().lineUp(),
              bite.alone().number(),
              bite.together().number(),
              bite.findings().stream()
                  .map(finding -> EffectsText.words(finding, bite.occasion(), style))
                  .collect(Collectors.joining("; "))));
    }
  }
}
