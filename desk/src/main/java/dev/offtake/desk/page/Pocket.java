package dev.offtake.desk.page;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.offtake.air.Day;
import dev.offtake.quantity.Style;
import dev.offtake.solve.Solution;
import dev.offtake.study.Bench;
import dev.offtake.study.Broken;
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
  private final ThreadLocal<Bench> benches;

  private Pocket(Opened opened, Style style, DoubleConsumer progress) {
    this.opened = opened;
    this.style = style;
    this.progress = progress;
    system = opened.system();
    states = new States(system);
    faults = Faults.all(system);
    benches = ThreadLocal.withInitial(() -> new Bench(system.network()));
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
    root.set("notice", notices(stops));
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
    ArrayNode notice = node.putArray("notice");
    Moment before = Moment.of(states, sound);
    List<Outcome> all =
        faults.parallelStream().map(fault -> broken(power, lineUp, fault, before)).toList();
    all.forEach(outcome -> broken.add(Delta.between(healthy, outcome.state())));
    all.forEach(outcome -> notice.add(outcome.verdict()));
  }

  /** A broken state and who would notice. */
  private record Outcome(JsonNode state, String verdict) {}

  /** Breaks the sound system where it stands, as the failure-effects table does. */
  private Outcome broken(Setting power, String lineUp, Fault fault, Moment sound) {
    Ask ask = ask(power, lineUp, List.of(fault.name()));
    Broken broken = Broken.of(system.network(), system.sides(), List.of(fault));
    Solution was = sound.solution();
    Solution is = benches.get().solve(broken, sound.question().setup(), was);
    Moment now = Moment.of(ask.question(system), is, style);
    double all = (double) faults.size() * system.settings().size() * system.lineUps().size();
    synchronized (progress) {
      progress.accept(Math.min(1, done.incrementAndGet() / all));
    }
    String verdict =
        was.solved() && is.solved()
            ? BreakDocument.verdict(Notice.best(Notice.between(was, is), false))
            : "no answer";
    return new Outcome(Delta.tidy(StateDocument.of(ask, now, sound)), verdict);
  }

  /** For each failure who would notice at each power in its usual line-up. */
  private ArrayNode notices(ArrayNode stops) {
    ArrayNode all = JsonNodeFactory.instance.arrayNode();
    for (int i = 0; i < faults.size(); i++) {
      ObjectNode verdicts = all.addObject();
      for (JsonNode stop : stops) {
        if (stop.get("lineUp").asText().equals(LineUp.USUAL)) {
          verdicts.set(stop.get("power").asText(), stop.get("notice").get(i));
        }
      }
    }
    stops.forEach(stop -> ((ObjectNode) stop).remove("notice"));
    return all;
  }
}
