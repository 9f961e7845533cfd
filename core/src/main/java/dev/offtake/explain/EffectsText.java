package dev.offtake.explain;

import dev.offtake.quantity.Style;
import dev.offtake.severity.Criterion;
import dev.offtake.severity.Severity;
import dev.offtake.study.Fault;
import dev.offtake.study.Sign;
import dev.offtake.study.Twins;
import dev.offtake.study.effect.Effects;
import dev.offtake.study.effect.FaultEffect;
import dev.offtake.study.effect.Finding;
import dev.offtake.study.effect.Occasion;
import dev.offtake.study.effect.Outcome;
import dev.offtake.system.BleedSystem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Prints the failure-effects table in columns of a given width. */
public final class EffectsText {
  private static final int INDENT = 7;

  private final BleedSystem system;
  private final Effects effects;
  private final Style style;
  private final int width;
  private final StringBuilder out = new StringBuilder();

  private EffectsText(BleedSystem system, Effects effects, int width, Style style) {
    this.system = system;
    this.effects = effects;
    this.width = Math.max(60, width);
    this.style = style;
  }

  /**
   * Prints.
   *
   * @param system whose failures they are
   * @param effects the table
   * @param width columns, 60 or more
   * @param style units
   */
  public static String print(BleedSystem system, Effects effects, int width, Style style) {
    EffectsText text = new EffectsText(system, effects, width, style);
    text.head();
    text.table();
    text.dormant();
    text.foot();
    return text.out.toString();
  }

  private void head() {
    line(system.title().toUpperCase(Locale.ROOT) + "   FAILURE EFFECTS", 0, 0);
    if (!system.about().isEmpty()) {
      line(system.about(), 0, 0);
    }
    line(
        count(effects.rows().size(), "failure")
            + " at "
            + count(effects.occasions().size(), "occasion")
            + ": every named power in every line-up. An extent that a failure may have is the usual"
            + " one.",
        0,
        0);
    Map<Severity, Long> counts =
        effects.rows().stream()
            .collect(
                Collectors.groupingBy(r -> r.severity(effects.scale()), Collectors.counting()));
    List<String> classes = new ArrayList<>();
    for (Severity severity : Severity.values()) {
      long count = counts.getOrDefault(severity, 0L);
      classes.add(severity.number() + " " + severity.words() + " " + count);
    }
    line("CLASS  " + String.join(" | ", classes), 0, INDENT);
    out.append('\n');
  }

  private void table() {
    Map<String, List<FaultEffect>> byPart = new LinkedHashMap<>();
    for (FaultEffect row : effects.rows()) {
      byPart.computeIfAbsent(heading(row), key -> new ArrayList<>()).add(row);
    }
    Set<String> done = new HashSet<>();
    byPart.forEach(
        (part, rows) -> {
          if (done.add(part)) {
            List<String> alike = alike(part, rows, byPart);
            done.addAll(alike);
            line(title(part, alike), 0, 0);
            rows.forEach(this::row);
            out.append('\n');
          }
        });
  }

  private String title(String part, List<String> alike) {
    if (alike.isEmpty()) {
      return part.toUpperCase(Locale.ROOT);
    }
    String name = "each side: " + Twins.withoutSide(part, system.sides());
    String side = Twins.sideOf(part, system.sides());
    return name.toUpperCase(Locale.ROOT) + "  (alike on each side; numbers of the " + side + ")";
  }

  /**
   * The same part of the other sides, where each of its failures has the same class and is seen at
   * the same occasions.
   */
  private List<String> alike(
      String part, List<FaultEffect> rows, Map<String, List<FaultEffect>> byPart) {
    String side = Twins.sideOf(part, system.sides());
    List<String> alike = new ArrayList<>();
    for (String other : side.isEmpty() ? List.<String>of() : system.sides()) {
      String twin = other + part.substring(side.length());
      if (!other.equals(side)) {
        if (!same(rows, byPart.getOrDefault(twin, List.of()))) {
          return List.of();
        }
        alike.add(twin);
      }
    }
    return alike;
  }

  private boolean same(List<FaultEffect> one, List<FaultEffect> two) {
    if (one.size() != two.size()) {
      return false;
    }
    for (int i = 0; i < one.size(); i++) {
      FaultEffect a = one.get(i);
      FaultEffect b = two.get(i);
      boolean same =
          a.fault().mode().name().equals(b.fault().mode().name())
              && a.severity(effects.scale()) == b.severity(effects.scale())
              && Arrays.stream(Sign.Verdict.values()).allMatch(v -> a.at(v).equals(b.at(v)));
      if (!same) {
        return false;
      }
    }
    return true;
  }

  private String heading(FaultEffect row) {
    String part = row.fault().part().name();
    return row.faults().size() == 1
        ? part
        : "both sides at once: " + Twins.withoutSide(part, system.sides());
  }

  private void row(FaultEffect row) {
    Fault fault = row.fault();
    String extent = fault.words(style).substring(fault.part().name().length() + 1);
    String severity = row.severity(effects.scale()).number();
    String start = "  " + severity + " ".repeat(INDENT - 2 - severity.length());
    line(start + extent + seen(row), 0, INDENT + 2);
    Outcome worst = row.worst(effects.scale());
    if (!worst.trouble().isEmpty()) {
      line(worst.occasion().name() + ": " + worst.trouble(), INDENT, INDENT + 2);
      return;
    }
    String leads =
        worst.findings().stream()
            .limit(3)
            .map(finding -> words(finding, worst.occasion(), style))
            .collect(Collectors.joining("; "));
    boolean matters = !worst.leadsTo(Criterion.NOTHING) && !worst.leadsTo(Criterion.SHOWS);
    if (matters) {
      line(worst.occasion().name() + ": " + leads, INDENT, INDENT + 2);
    }
    if (!worst.moves().isEmpty()) {
      line(moves(worst), INDENT, INDENT + 2);
    }
  }

  private String seen(FaultEffect row) {
    if (row.moving()) {
      return " | shows only while power moves";
    }
    List<Sign.Verdict> verdicts =
        Arrays.stream(Sign.Verdict.values()).filter(v -> !row.at(v).isEmpty()).toList();
    List<String> clauses = new ArrayList<>();
    for (Sign.Verdict verdict : verdicts) {
      boolean rest = !clauses.isEmpty() && clauses.size() == verdicts.size() - 1;
      String at = Occasions.words(row.at(verdict), effects.occasions());
      clauses.add(SignWords.of(verdict) + ": " + (rest ? "elsewhere" : at));
    }
    return " | " + String.join(" | ", clauses);
  }

  private static String moves(Outcome outcome) {
    return "moves: "
        + outcome.moves().stream()
            .limit(3)
            .map(EffectsText::moved)
            .collect(Collectors.joining(", "));
  }

  /** How far a valve has moved. */
  static String moved(Outcome.Move move) {
    return String.format(
        Locale.ROOT,
        "%s %.0f -> %.0f %% open",
        move.part(),
        100 * move.healthy(),
        100 * move.now());
  }

  private void dormant() {
    List<FaultEffect> dormant =
        effects.dormant().stream().filter(r -> !r.moving() && r.faults().size() == 1).toList();
    if (dormant.isEmpty()) {
      return;
    }
    line("DORMANT: NOTHING SHOWS UNTIL SOMETHING ELSE FAILS", 0, 0);
    for (FaultEffect row : dormant) {
      List<Effects.Bite> bites =
          effects.bites().stream()
              .filter(bite -> bite.dormant().name().equals(row.fault().name()))
              .toList();
      if (!effects.pairs() || !bites.isEmpty()) {
        line(row.fault().words(style), 2, 4);
      }
      bites.forEach(this::bite);
    }
    if (effects.pairs()) {
      long quiet =
          dormant.stream()
              .filter(
                  row ->
                      effects.bites().stream()
                          .noneMatch(b -> b.dormant().name().equals(row.fault().name())))
              .count();
      line(count(quiet, "more dormant failure") + " with no partner that bites", 2, 4);
    } else {
      line("Add --pairs to find the partner that makes each of them bite.", 2, 4);
    }
    out.append('\n');
  }

  private void bite(Effects.Bite bite) {
    String leads =
        bite.findings().stream()
            .limit(2)
            .map(finding -> words(finding, bite.occasion(), style))
            .collect(Collectors.joining("; "));
    String text =
        "with "
            + bite.partner().words(style)
            + ": "
            + bite.together().number()
            + " instead of "
            + bite.alone().number()
            + " at "
            + bite.occasion().name()
            + (leads.isEmpty() ? "" : ": " + leads);
    line(text, 4, 6);
  }

  private void foot() {
    line(
        "CLASSES       After MIL-STD-1629A. Which finding means which class is an assumption that"
            + " the file may replace (severity:): "
            + classes()
            + ".",
        0,
        14);
    line(
        "RATES         Orders of magnitude, assumptions; the file may give its own with a source"
            + " (failure rates:).",
        0,
        14);
    line(
        "NOTICED       plain: over twice what the gauge may be wrong and over 3 psi or 15 °F, or a"
            + " light, a trip or a user; lost in the gauge: it moves by less; test ports do not"
            + " count.",
        0,
        14);
    line("CAUTION       " + StateAnswer.CAUTION, 0, 14);
  }

  private String classes() {
    List<String> all = new ArrayList<>();
    for (Criterion criterion : Criterion.values()) {
      all.add(effects.scale().of(criterion).number() + " " + criterion.words());
    }
    return String.join(", ", all);
  }

  private static String count(long number, String noun) {
    return number + " " + noun + (number == 1 ? "" : "s");
  }

  private void line(String text, int indent, int hang) {
    out.append(Columns.wrap(text, width, indent, hang));
  }

  /** What a finding says, for others that print the table. */
  static String words(Finding finding, Occasion occasion, Style style) {
    return new FindingWords(style, occasion.setup().conditions().ambientP()).of(finding);
  }
}
