package dev.offtake.desk.page;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.offtake.explain.Asked;
import dev.offtake.explain.Glance;
import dev.offtake.explain.StateAnswer;
import dev.offtake.solve.Setup;
import dev.offtake.solve.Solution;
import dev.offtake.study.Fault;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** A state as the page is sent it; see docs/page-api.md. */
final class StateDocument {
  private final Ask ask;
  private final Moment now;
  private final @Nullable Moment healthy;
  private final Shows shows;
  private final ObjectNode root = JsonNodeFactory.instance.objectNode();

  private StateDocument(Ask ask, Moment now, @Nullable Moment healthy) {
    this.ask = ask;
    this.now = now;
    this.healthy = healthy;
    shows = new Shows(ask.style());
  }

  /** Answers a question. */
  static ObjectNode of(States states, Ask ask) {
    Moment now = Moment.of(states, ask);
    @Nullable Moment healthy = ask.broken() ? Moment.of(states, ask.healthy()) : null;
    return new StateDocument(ask, now, healthy).all();
  }

  /**
   * Tells a broken state that was solved elsewhere.
   *
   * @param ask the question
   * @param now its state
   * @param healthy the sound one
   */
  static ObjectNode of(Ask ask, Moment now, Moment healthy) {
    return new StateDocument(ask, now, healthy).all();
  }

  /** The sentence that stands above all others. */
  static String lead(States states, Ask ask) {
    Moment now = Moment.of(states, ask);
    @Nullable Moment healthy = ask.broken() ? Moment.of(states, ask.healthy()) : null;
    return new StateDocument(ask, now, healthy).lead();
  }

  private ObjectNode all() {
    Solution solution = now.solution();
    root.put("core", solution.conditions().core());
    if (!ask.power().isEmpty()) {
      root.put("power", ask.power());
    }
    @Nullable Glance glance = now.glance();
    asked(glance == null ? now.question().asked(ask.style()) : glance.asked());
    positions();
    root.put("solved", glance != null);
    ArrayNode headline = root.putArray("headline");
    if (glance == null) {
      String trouble = Glance.trouble(solution);
      headline.add(trouble);
      root.put("problem", trouble);
    } else {
      headline.add(lead());
      glance.headline().forEach(headline::add);
      body(glance);
    }
    return root.put("caution", StateAnswer.CAUTION);
  }

  private String lead() {
    @Nullable Moment sound = healthy;
    boolean both = sound != null && sound.glance() != null && now.glance() != null;
    return sound != null && both
        ? Glance.lead(now.question(), sound.solution(), now.solution(), ask.style())
        : now.says();
  }

  private void asked(Asked asked) {
    ArrayNode lines = root.putArray("asked");
    lines.add(asked.power()).add(asked.day()).add(asked.lineUp());
    asked.broken().forEach(root.putArray("broken")::add);
    asked.warnings().forEach(root.putArray("warnings")::add);
    asked.assumes().forEach(root.putArray("assumes")::add);
  }

  /** How every switch stands, and every valve that a person has fixed. */
  private void positions() {
    Setup setup = now.solution().setup();
    ObjectNode positions = root.putObject("positions");
    for (String name : now.question().system().switches().keySet()) {
      positions.put(name, setup.positions().get(name));
    }
    new TreeMap<>(setup.locks()).forEach(positions::put);
  }

  private void body(Glance glance) {
    @Nullable Moment sound = healthy;
    @Nullable Glance before = sound == null ? null : sound.glance();
    @Nullable Solution was = before == null || sound == null ? null : sound.solution();
    new PointNodes(now.solution(), was, shows).fill(root.putArray("points"), glance);
    new PartNodes(now.solution(), was, shows, broken()).fill(root, glance, before);
    PanelNodes.fill(root, glance.panel(), before == null ? null : before.panel());
    ArrayNode room = root.putArray("room");
    for (StateAnswer.Room left : glance.room()) {
      int part = now.solution().network().part(left.name());
      boolean isShort = part >= 0 && PartNodes.isShort(glance.acts().get(part).regime());
      room.addObject().put("user", left.name()).put("says", left.says()).put("short", isShort);
    }
    glance.memory().forEach(root.putArray("memory")::add);
    root.put("balance", glance.balance());
  }

  /** What is broken in each part, in words. */
  private Map<String, String> broken() {
    List<Fault> faults = now.question().faults();
    return faults.stream()
        .collect(
            Collectors.toMap(
                fault -> fault.part().name(),
                fault -> modeWords(fault),
                (one, two) -> one + "; " + two));
  }

  private String modeWords(Fault fault) {
    String words = fault.words(ask.style());
    return Objects.requireNonNull(words).substring(fault.part().name().length()).strip();
  }
}
