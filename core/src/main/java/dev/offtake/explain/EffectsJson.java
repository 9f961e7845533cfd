package dev.offtake.explain;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.offtake.quantity.Style;
import dev.offtake.severity.Criterion;
import dev.offtake.study.Fault;
import dev.offtake.study.Sign;
import dev.offtake.study.effect.Effects;
import dev.offtake.study.effect.FaultEffect;
import dev.offtake.study.effect.Finding;
import dev.offtake.study.effect.Occasion;
import dev.offtake.study.effect.Outcome;
import dev.offtake.system.BleedSystem;
import java.util.List;

/** The failure-effects table as JSON, its layout numbered by {@code offtake effects}. */
public final class EffectsJson {
  /** Number of the layout; raised when a field changes its meaning or goes. */
  public static final int LAYOUT = 1;

  private static final ObjectMapper MAPPER = new ObjectMapper();

  private final Effects effects;
  private final Style style;

  private EffectsJson(Effects effects, Style style) {
    this.effects = effects;
    this.style = style;
  }

  /**
   * Makes the document; numbers in SI, words in the units of the style.
   *
   * @param system whose failures they are
   * @param effects the table
   * @param style units of the words
   */
  public static String print(BleedSystem system, Effects effects, Style style) {
    return new EffectsJson(effects, style).document(system).toPrettyString();
  }

  private ObjectNode document(BleedSystem system) {
    ObjectNode root = MAPPER.createObjectNode();
    root.put("offtake effects", LAYOUT);
    root.put("title", system.title());
    ArrayNode occasions = root.putArray("occasions");
    for (Occasion occasion : effects.occasions()) {
      occasions.addObject().put("power", occasion.power()).put("line-up", occasion.lineUp());
    }
    ObjectNode classes = root.putObject("classes");
    for (Criterion criterion : Criterion.values()) {
      classes.put(criterion.words(), effects.scale().of(criterion).number());
    }
    ArrayNode rows = root.putArray("failures");
    effects.rows().forEach(row -> row(rows.addObject(), row));
    if (effects.pairs()) {
      ArrayNode bites = root.putArray("pairs");
      effects.bites().forEach(bite -> bite(bites.addObject(), bite));
    }
    root.put("caution", StateAnswer.CAUTION);
    return root;
  }

  private void row(ObjectNode node, FaultEffect row) {
    ArrayNode faults = node.putArray("faults");
    row.faults().forEach(fault -> fault(faults.addObject(), fault));
    node.put("class", row.severity(effects.scale()).number());
    node.put("dormant", row.dormant() && !row.moving());
    node.put("only while power moves", row.moving());
    node.put("means", row.fault().mode().means());
    node.put("noticed without gauges", row.fault().mode().noticed());
    node.put("failures per hour", row.fault().mode().rate());
    ArrayNode outcomes = node.putArray("outcomes");
    row.outcomes().forEach(outcome -> outcome(outcomes.addObject(), outcome));
  }

  private void fault(ObjectNode node, Fault fault) {
    node.put("part", fault.part().name());
    node.put("unit", fault.mode().unit());
    node.put("mode", fault.mode().name());
    if (fault.mode().extent() != null) {
      node.put("extent", fault.extent());
    }
    node.put("words", fault.words(style));
  }

  private void outcome(ObjectNode node, Outcome outcome) {
    node.put("power", outcome.occasion().power());
    node.put("line-up", outcome.occasion().lineUp());
    node.put("class", outcome.severity(effects.scale()).number());
    if (!outcome.trouble().isEmpty()) {
      node.put("trouble", outcome.trouble());
      return;
    }
    node.put("healthy", outcome.before().word());
    node.put("now", outcome.after().word());
    findings(node.putArray("leads to"), outcome.findings(), outcome.occasion());
    ArrayNode moves = node.putArray("valves that move");
    for (Outcome.Move move : outcome.moves()) {
      moves
          .addObject()
          .put("part", move.part())
          .put("healthy", move.healthy())
          .put("now", move.now());
    }
    node.put("noticed", SignWords.of(outcome.noticed()));
    ArrayNode signs = node.putArray("shows");
    for (Sign sign : outcome.signs()) {
      if (sign.verdict() != Sign.Verdict.HIDDEN) {
        sign(signs.addObject(), sign);
      }
    }
  }

  private void findings(ArrayNode nodes, List<Finding> findings, Occasion occasion) {
    for (Finding finding : findings) {
      nodes
          .addObject()
          .put("criterion", finding.criterion().words())
          .put("place", finding.place())
          .put("says", EffectsText.words(finding, occasion, style));
    }
  }

  private void sign(ObjectNode node, Sign sign) {
    node.put("what", sign.part());
    node.put("needle", sign.needle());
    node.put("reads", sign.reads());
    node.put("healthy", sign.healthy());
    node.put("now", sign.now());
    node.put("verdict", SignWords.of(sign.verdict()));
    node.put("seen", sign.seen());
    node.put("at a test port", sign.atPort());
  }

  private void bite(ObjectNode node, Effects.Bite bite) {
    fault(node.putObject("dormant"), bite.dormant());
    fault(node.putObject("bites with"), bite.partner());
    node.put("power", bite.occasion().power());
    node.put("line-up", bite.occasion().lineUp());
    node.put("class of the second alone", bite.alone().number());
    node.put("class of both", bite.together().number());
    findings(node.putArray("leads to"), bite.findings(), bite.occasion());
  }
}
