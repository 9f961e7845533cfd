package dev.offtake.desk.page;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.offtake.air.Day;
import dev.offtake.cause.Interview;
import dev.offtake.explain.Asked;
import dev.offtake.explain.Question;
import dev.offtake.explain.StateAnswer;
import dev.offtake.logic.Condition;
import dev.offtake.part.Kind;
import dev.offtake.part.Kinds;
import dev.offtake.part.Light;
import dev.offtake.part.Part;
import dev.offtake.part.Role;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.Style;
import dev.offtake.study.Fault;
import dev.offtake.study.Faults;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.LineUp;
import dev.offtake.system.NeverLine;
import dev.offtake.system.Setting;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

/** A system as the page is sent it, once for each load; see docs/page-api.md. */
final class SystemDocument {
  /** Core speeds of the rail where the file has no other powers, fractions. */
  private static final double SLOW = 0.55;

  private static final double FAST = 1.0;

  private final Opened opened;
  private final BleedSystem system;
  private final Style style;
  private final ObjectNode root = JsonNodeFactory.instance.objectNode();

  private SystemDocument(Opened opened, Style style) {
    this.opened = opened;
    this.style = style;
    system = opened.system();
  }

  /** Makes the document. */
  static ObjectNode of(Opened opened, Style style) {
    return new SystemDocument(opened, style).all();
  }

  /** Lowest core speed of the rail, a fraction. */
  static double low(BleedSystem system) {
    double least = system.settings().values().stream().mapToDouble(Setting::core).min().orElse(1);
    return Math.min(SLOW, Math.floor(100 * least) / 100);
  }

  /** Highest core speed of the rail, a fraction. */
  static double high(BleedSystem system) {
    double most = system.settings().values().stream().mapToDouble(Setting::core).max().orElse(1);
    return Math.max(FAST, Math.ceil(100 * most) / 100);
  }

  /** The side that a name belongs to; empty for none. */
  static String side(BleedSystem system, String name) {
    return system.sides().stream().filter(s -> name.startsWith(s + " ")).findFirst().orElse("");
  }

  private ObjectNode all() {
    root.put("title", system.title()).put("about", system.about()).put("file", opened.file());
    root.put("invented", system.about().toLowerCase(Locale.ROOT).contains("invented"));
    system.sides().forEach(root.putArray("sides")::add);
    root.putObject("core").put("low", low(system)).put("high", high(system));
    root.put("standardDay", BleedSystem.STANDARD_DAY);
    powers();
    days();
    lineUps();
    switches();
    ArrayNode points = root.putArray("points");
    system.network().points().forEach(p -> named(points.addObject(), p.name()));
    ArrayNode parts = root.putArray("parts");
    Set<String> possible =
        Faults.all(system).stream().map(Fault::name).collect(Collectors.toUnmodifiableSet());
    system
        .network()
        .parts()
        .forEach(p -> new PartDocument(system, p, possible, style).fill(parts.addObject()));
    GaugeNodes.fill(root.putArray("gauges"), system, style);
    ArrayNode lights = root.putArray("lights");
    system.parts().stream()
        .filter(Light.class::isInstance)
        .forEach(light -> lights.addObject().put("name", light.name()));
    new Interview(system).questions().forEach(root.putArray("asks")::add);
    seen(root.putArray("seen"));
    heat();
    ShelfDocument.fill(root, opened.shelf(), system);
    words();
    return root;
  }

  private void named(ObjectNode node, String name) {
    node.put("name", name);
    String side = side(system, name);
    if (!side.isEmpty()) {
      node.put("side", side);
    }
  }

  private void powers() {
    ArrayNode powers = root.putArray("powers");
    for (Setting setting : system.settings().values()) {
      ObjectNode node = powers.addObject().put("name", setting.name()).put("core", setting.core());
      if (Double.isFinite(setting.fan())) {
        node.put("fan", setting.fan());
      }
      node.put("day", setting.day().isEmpty() ? BleedSystem.STANDARD_DAY : setting.day());
      node.put("lineUp", setting.lineUp().isEmpty() ? LineUp.USUAL : setting.lineUp());
      node.put("says", "core " + style.print(setting.core(), Dimension.SHARE));
    }
  }

  private void days() {
    ArrayNode days = root.putArray("days");
    system.days().forEach((name, day) -> days.addObject().put("name", name).put("says", day(day)));
  }

  private String day(Day day) {
    String air = style.print(day.temperature(), Dimension.TEMPERATURE);
    String mach = day.mach() > 0 ? String.format(Locale.ROOT, ", Mach %.2f", day.mach()) : "";
    return style.print(day.pressure(), Dimension.ABSOLUTE_PRESSURE) + ", " + air + mach;
  }

  private void lineUps() {
    ArrayNode lineUps = root.putArray("lineUps");
    for (LineUp lineUp : system.lineUps().values()) {
      List<String> words = new ArrayList<>();
      lineUp.positions().forEach((name, position) -> words.add(name + " " + position));
      lineUp.locks().forEach((part, lock) -> words.add(part + " " + lock.words()));
      String says = words.isEmpty() ? "as the switches sit" : String.join(", ", words);
      ObjectNode node = lineUps.addObject().put("name", lineUp.name()).put("says", says);
      ObjectNode positions = node.putObject("positions");
      lineUp.positions().forEach(positions::put);
      lineUp.locks().forEach((part, lock) -> positions.put(part, lock.words()));
    }
  }

  private void switches() {
    ArrayNode switches = root.putArray("switches");
    system
        .switches()
        .forEach(
            (name, positions) -> {
              ObjectNode node = switches.addObject();
              named(node, name);
              positions.forEach(node.putArray("positions")::add);
              node.put("sits", positions.get(0));
              node.put("isSupplyOrUser", commands(name));
            });
  }

  /** Whether a switch commands something that gives or takes air. */
  private boolean commands(String name) {
    return system.parts().stream()
        .filter(part -> part.role() == Role.USER || part.role() == Role.SOURCE)
        .anyMatch(part -> commands(name, part));
  }

  private boolean commands(String name, Part part) {
    String side = side(system, part.name());
    return part.controls().stream()
        .flatMap(control -> control.rules().stream())
        .map(rule -> rule.when())
        .filter(Objects::nonNull)
        .map(Condition::names)
        .anyMatch(names -> names.contains(name) || names.contains(withoutSide(name, side)));
  }

  private static String withoutSide(String name, String side) {
    boolean own = !side.isEmpty() && name.startsWith(side + " ");
    return own ? name.substring(side.length() + 1) : "";
  }

  /** Users that a person sees working or not: whether they do is a reading as well. */
  private void seen(ArrayNode seen) {
    Set<String> kinds =
        Kinds.all().stream()
            .filter(kind -> kind.positions().contains("off"))
            .map(Kind::name)
            .collect(Collectors.toUnmodifiableSet());
    system.parts().stream()
        .filter(part -> part.role() == Role.USER && kinds.contains(part.kind()))
        .forEach(part -> seen.add(part.name()));
  }

  private void heat() {
    Shows shows = new Shows(style);
    ArrayNode heat = root.putArray("heat");
    for (int step = 1; step <= Shows.steps(); step++) {
      heat.addObject().put("step", step).put("says", shows.step(step));
    }
  }

  private void words() {
    ArrayNode never = root.putArray("never");
    system.never().stream().map(NeverLine::text).forEach(never::add);
    root.putArray("cautions").add(StateAnswer.CAUTION);
    try {
      Asked asked = Question.of(system, "", "", "", List.of()).asked(style);
      asked.warnings().forEach(root.putArray("warnings")::add);
      root.put("standsOn", asked.standsOn());
    } catch (QuantityProblem none) {
      root.putArray("warnings"); // a file without any power: the page asks for a speed
    }
  }
}
