package dev.offtake.desk.page;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.offtake.desk.drawing.Drawing;
import dev.offtake.quantity.Style;
import dev.offtake.study.Curve;
import dev.offtake.system.BleedSystem;
import java.io.IOException;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Everything that the page can ask about one system, whatever way it comes. */
final class Answers {
  /** Steps of core speed in which the rail is gone along once, before anyone does. */
  private static final double REHEARSED = 0.002;

  /** So long states are told one after another in one answer, ns. */
  private static final long WAIT = 50_000_000;

  /** So many line-ups' changeovers are kept. */
  private static final int KEPT = 64;

  private final Opened opened;
  private final States states;
  private final Work work;
  private final Assets.Asset drawing;
  private final Map<Style, Assets.Asset> systems = new EnumMap<>(Style.class);
  private final Map<String, List<Curve.Event>> changes =
      Collections.synchronizedMap(
          new LinkedHashMap<>(KEPT, 0.75f, true) {
            private static final long serialVersionUID = 1;

            @Override
            protected boolean removeEldestEntry(Map.Entry<String, List<Curve.Event>> eldest) {
              return size() > KEPT;
            }
          });

  Answers(Opened opened, Work work) {
    this.opened = opened;
    this.work = work;
    states = new States(opened.system());
    for (Style style : Style.values()) {
      byte[] bytes = Sender.bytes(SystemDocument.of(opened, style));
      systems.put(style, Assets.Asset.of(bytes, Sender.JSON));
    }
    drawing = Assets.Asset.of(Sender.bytes(drawing(opened.system())), Sender.JSON);
  }

  BleedSystem system() {
    return opened.system();
  }

  /** Everything that stays the same. */
  Assets.Asset system(Style style) {
    return java.util.Objects.requireNonNull(systems.get(style));
  }

  /** The drawing, which stays the same. */
  Assets.Asset drawing() {
    return drawing;
  }

  /** The drawing of a system. */
  static ObjectNode drawing(BleedSystem system) {
    Drawing drawing = Drawing.of(system);
    ObjectNode node = JsonNodeFactory.instance.objectNode().put("svg", drawing.svg());
    node.set("index", drawing.index());
    return node;
  }

  /** One state. */
  JsonNode state(Ask ask) {
    return StateDocument.of(states, ask);
  }

  /**
   * States along the power, such as a hand comes by.
   *
   * @param cores speeds, fractions
   * @return the first of them, as many as take no longer than a hand may wait; at least one
   */
  JsonNode states(Ask ask, List<Double> cores) {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    ArrayNode told = root.putArray("states");
    long end = System.nanoTime() + WAIT;
    for (double core : cores) {
      told.add(StateDocument.of(states, ask.at(core)));
      if (System.nanoTime() > end) {
        break;
      }
    }
    return root;
  }

  /** What changes along the power. */
  JsonNode changes(Ask ask) {
    return Changes.of(events(ask));
  }

  /** From the lowest power to the highest and back. */
  JsonNode walk(Ask ask) {
    List<Curve.Event> events = events(ask.healthy());
    return work.answer(() -> WalkDocument.of(states, ask, events));
  }

  /** What follows from a failure. */
  JsonNode broken(Ask ask) {
    return work.answer(() -> BreakDocument.of(opened.system(), ask));
  }

  /**
   * A profile of the shelf, played.
   *
   * @param file its name on the shelf
   */
  JsonNode play(String file, Style style) throws IOException {
    String text =
        opened
            .shelf()
            .text(file)
            .orElseThrow(
                () ->
                    new Refusal(
                        Refusal.MISSING,
                        "there is no profile of that name",
                        "choose from the list"));
    return work.answer(() -> PlayDocument.of(opened.system(), file, text, style));
  }

  /** A curve. */
  JsonNode curve(CurveDocument.Wanted wanted) {
    return work.answer(() -> CurveDocument.of(opened.system(), wanted));
  }

  private List<Curve.Event> events(Ask ask) {
    List<String> still =
        List.of(ask.power(), ask.day(), ask.lineUp(), ask.sets() + "", ask.faults() + "");
    String key = String.join("\n", still);
    List<Curve.Event> known = changes.get(key);
    if (known == null) {
      known = work.answer(() -> Changes.events(opened.system(), ask));
      changes.put(key, known);
    }
    return known;
  }

  /** Prepares what will most likely be asked first, and has told it once: a hand that drags. */
  void prepare() {
    work.soon(
        () -> {
          if (!opened.system().settings().isEmpty()) {
            Ask first = Ask.of(Map.of());
            double low = SystemDocument.low(opened.system());
            double high = SystemDocument.high(opened.system());
            states.ladder(first.question(opened.system())).climb(low, high);
            for (double core = low; core < high; core += REHEARSED) {
              String speed = String.format(Locale.ROOT, "%.4f", core);
              Sender.bytes(StateDocument.of(states, Ask.of(Map.of("core", List.of(speed)))));
            }
          }
        });
  }
}
