package dev.offtake.desk.page;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.offtake.air.Day;
import dev.offtake.explain.Question;
import dev.offtake.quantity.Style;
import dev.offtake.study.Curve;
import dev.offtake.study.Fault;
import dev.offtake.study.Faults;
import dev.offtake.study.Notice;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.LineUp;
import dev.offtake.system.Setting;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.DoubleConsumer;

/**
 * Everything that a pocket sheet answers, worked out before: each power of the file on its own day,
 * in each line-up of the file, sound and with each single failure to its usual extent.
 *
 * <p>A state is kept as what differs from another one ({@link Delta}): a broken one from the sound
 * one beside it.
 */
final class Pocket {
  /** Number of the layout, which the script of the sheet knows. */
  private static final int LAYOUT = 1;

  private final Opened opened;
  private final BleedSystem system;
  private final Style style;
  private final States states;
  private final DoubleConsumer progress;
  private final AtomicInteger done = new AtomicInteger();
  private final List<Fault> faults;

  private Pocket(Opened opened, Style style, DoubleConsumer progress) {
    this.opened = opened;
    this.style = style;
    this.progress = progress;
    system = opened.system();
    states = new States(system);
    faults = Faults.all(system);
  }

  /**
   * Works everything out.
   *
   * @param opened the system
   * @param style units of the words
   * @param progress is told the share that is done, 0..1; whatever it throws ends the work
   */
  static ObjectNode of(Opened opened, Style style, DoubleConsumer progress) {
    return new Pocket(opened, style, progress).all();
  }

  private ObjectNode all() {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("layout", LAYOUT).put("units", style.name().toLowerCase(Locale.ROOT));
    root.set("system", SystemDocument.of(opened, style));
    root.set("drawing", Answers.drawing(system));
    days(root.putObject("days"));
    faults.forEach(fault -> root.withArray("faults").add(fault.name()));
    ArrayNode stops = root.putArray("stops");
    for (Setting power : system.settings().values()) {
      for (String lineUp : system.lineUps().keySet()) {
        stop(stops.addObject(), power, lineUp);
      }
    }
    root.set("notice", notices());
    return root;
  }

  /** Air of the days that are in it, so that another day can be told from them. */
  private void days(ObjectNode days) {
    for (Setting power : system.settings().values()) {
      Day day = system.dayOf(power);
      String name = power.day().isEmpty() ? BleedSystem.STANDARD_DAY : power.day();
      days.putObject(name).put("p", day.pressure()).put("t", day.temperature());
    }
  }

  private Ask ask(Setting power, String lineUp, List<String> broken) {
    return new Ask(power.name(), Double.NaN, "", lineUp, List.of(), broken, style);
  }

  private void stop(ObjectNode node, Setting power, String lineUp) {
    node.put("power", power.name()).put("lineUp", lineUp);
    Ask sound = ask(power, lineUp, List.of());
    JsonNode healthy = Delta.tidy(StateDocument.of(states, sound));
    node.set("sound", healthy);
    if (lineUp.equals(LineUp.USUAL)) {
      List<Curve.Event> events = Changes.events(system, sound);
      node.set("changes", Delta.tidy(Changes.of(events)));
      node.set("walk", Delta.tidy(WalkDocument.of(states, sound, events)));
    }
    ArrayNode broken = node.putArray("broken");
    List<JsonNode> all =
        faults.parallelStream().map(fault -> broken(power, lineUp, fault, healthy)).toList();
    broken.addAll(all);
  }

  private JsonNode broken(Setting power, String lineUp, Fault fault, JsonNode healthy) {
    Ask ask = ask(power, lineUp, List.of(fault.name()));
    JsonNode now = StateDocument.of(states, ask);
    double all = (double) faults.size() * system.settings().size() * system.lineUps().size();
    synchronized (progress) {
      progress.accept(Math.min(1, done.incrementAndGet() / all));
    }
    return Delta.between(healthy, Delta.tidy(now));
  }

  /** For each failure who would notice at each power in its usual line-up. */
  private ArrayNode notices() {
    ArrayNode all = JsonNodeFactory.instance.arrayNode();
    for (Fault fault : faults) {
      ObjectNode verdicts = all.addObject();
      for (Setting power : system.settings().values()) {
        Question sound = ask(power, "", List.of()).question(system);
        Question broken = ask(power, "", List.of(fault.name())).question(system);
        var was = states.solve(sound, true);
        var is = states.solve(broken, true);
        if (was.solved() && is.solved()) {
          String word = BreakDocument.verdict(Notice.best(Notice.between(was, is), false));
          verdicts.put(power.name(), word);
        } else {
          verdicts.put(power.name(), "no answer");
        }
      }
    }
    return all;
  }
}
