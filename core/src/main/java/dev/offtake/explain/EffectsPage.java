package dev.offtake.explain;

import dev.offtake.part.Extent;
import dev.offtake.part.Inspection;
import dev.offtake.part.Mode;
import dev.offtake.quantity.Style;
import dev.offtake.study.Fault;
import dev.offtake.study.Sign;
import dev.offtake.study.effect.Effects;
import dev.offtake.study.effect.FaultEffect;
import dev.offtake.study.effect.Occasion;
import dev.offtake.study.effect.Outcome;
import dev.offtake.system.BleedSystem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Prints the failures of one part, or of the same part of each side, in full: every occasion, what
 * shows, and how to look for it.
 */
public final class EffectsPage {
  private static final int LABEL = 12;

  private final BleedSystem system;
  private final Effects effects;
  private final Set<String> parts;
  private final Style style;
  private final int width;
  private final StringBuilder out = new StringBuilder();

  private EffectsPage(
      BleedSystem system, Effects effects, Set<String> parts, int width, Style style) {
    this.system = system;
    this.parts = parts;
    this.effects = effects;
    this.width = Math.max(60, width);
    this.style = style;
  }

  /**
   * Prints.
   *
   * @param system whose parts they are
   * @param effects the failures of the parts
   * @param parts full names; a failure of several of them at once stands with the first
   * @param width columns, 60 or more
   * @param style units
   */
  public static String print(
      BleedSystem system, Effects effects, Set<String> parts, int width, Style style) {
    EffectsPage page = new EffectsPage(system, effects, parts, width, style);
    page.all();
    return page.out.toString();
  }

  private void all() {
    List<FaultEffect> left = new ArrayList<>(effects.rows());
    for (String part : parts) {
      List<FaultEffect> own = left.stream().filter(row -> concerns(row, part)).toList();
      left.removeAll(own);
      line((system.title() + "   failures of the " + part).toUpperCase(Locale.ROOT), 0, 0);
      if (!system.about().isEmpty()) {
        line(system.about(), 0, 0);
      }
      out.append('\n');
      own.forEach(this::failure);
    }
    labelled("RATES", "orders of magnitude, assumptions, unless the file gives its own", 0);
    labelled("MINUTES", "common practice, no source", 0);
    labelled("CAUTION", StateAnswer.CAUTION, 0);
  }

  private static boolean concerns(FaultEffect row, String part) {
    return row.faults().stream().anyMatch(fault -> fault.part().name().equals(part));
  }

  private void failure(FaultEffect row) {
    Fault fault = row.fault();
    Mode mode = fault.mode();
    String both = row.faults().size() > 1 ? ", on both sides at once" : "";
    String name = mode.name() + both;
    line(name.toUpperCase(Locale.ROOT) + "   class " + severity(row), 0, 0);
    labelled("means", mode.means(), 2);
    @Nullable Extent asks = mode.extent();
    if (asks != null) {
      String here = "here " + Fault.print(asks, fault.extent(), style);
      labelled("extent", here + "; " + Fault.range(asks, style), 2);
    }
    labelled(
        "unit",
        mode.unit()
            + String.format(Locale.ROOT, "; about %.3g in a million hours", 1e6 * mode.rate()),
        2);
    outcomes(row);
    if (row.moving()) {
      labelled("note", "it shows only while power moves: states at rest tell nothing of it", 2);
    }
    labelled("noticed", mode.noticed(), 2);
    inspection(mode.inspection());
    bites(row);
    out.append('\n');
  }

  private String severity(FaultEffect row) {
    return row.severity(effects.scale()).number() + " " + row.severity(effects.scale()).words();
  }

  /** Occasions that tell the same stand together. */
  private void outcomes(FaultEffect row) {
    Map<String, List<Occasion>> alike = new LinkedHashMap<>();
    for (Outcome outcome : row.outcomes()) {
      alike.computeIfAbsent(says(outcome), key -> new ArrayList<>()).add(outcome.occasion());
    }
    alike.forEach((says, at) -> line(Occasions.words(at, effects.occasions()) + ": " + says, 2, 6));
  }

  private String says(Outcome outcome) {
    if (!outcome.trouble().isEmpty()) {
      return outcome.trouble();
    }
    List<String> says = new ArrayList<>();
    if (!outcome.before().word().equals(outcome.after().word())) {
      says.add(outcome.before().word() + " -> " + outcome.after().word());
    }
    outcome.findings().stream()
        .limit(4)
        .map(finding -> EffectsText.words(finding, outcome.occasion(), style))
        .forEach(says::add);
    outcome.moves().stream().limit(3).map(EffectsText::moved).forEach(says::add);
    String severity = outcome.severity(effects.scale()).number();
    return severity + ", " + String.join("; ", says) + ". " + shows(outcome);
  }

  private String shows(Outcome outcome) {
    Sign.Verdict noticed = outcome.noticed();
    String best =
        outcome.signs().stream()
            .filter(sign -> !sign.atPort() && sign.verdict() == noticed)
            .filter(sign -> noticed != Sign.Verdict.HIDDEN)
            .sorted(Comparator.comparingDouble(sign -> -sign.weight()))
            .limit(3)
            .map(sign -> SignWords.of(sign, style))
            .collect(Collectors.joining(", "));
    String port =
        outcome.signs().stream()
            .filter(sign -> sign.atPort() && sign.verdict() == Sign.Verdict.PLAIN)
            .limit(1)
            .map(sign -> "; a test gauge would show " + SignWords.of(sign, style))
            .collect(Collectors.joining());
    return SignWords.of(noticed) + (best.isEmpty() ? "" : ": " + best) + port;
  }

  private void inspection(Inspection look) {
    String tools = look.tools().isEmpty() ? "" : " (" + look.tools() + ")";
    labelled(
        "look",
        String.format(
            Locale.ROOT,
            "%s%s; %s, %.0f min and %.0f to get there. %s",
            look.how(),
            tools,
            look.access().words(),
            look.minutes(),
            look.access().minutes(),
            look.access().caution()),
        2);
  }

  private void bites(FaultEffect row) {
    for (Effects.Bite bite : effects.bites()) {
      if (bite.dormant().name().equals(row.fault().name())) {
        labelled(
            "bites",
            "with "
                + bite.partner().words(style)
                + ": class "
                + bite.together().number()
                + " at "
                + bite.occasion().name(),
            2);
      }
    }
  }

  private void labelled(String label, String says, int indent) {
    if (!says.isEmpty()) {
      String pad = " ".repeat(Math.max(1, LABEL - label.length()));
      line(label + pad + says, indent, indent + LABEL);
    }
  }

  private void line(String text, int indent, int hang) {
    out.append(Columns.wrap(text, width, indent, hang));
  }
}
